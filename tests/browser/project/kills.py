"""A browser killed at random moments while readings are kept and pieces are ticked as cut.

What the page has shown as kept is written down as it is shown; after each kill the page, opened
again, must show all of it, and nothing that was not entered whole.
"""

import os
import random
import signal
import threading
import time
from contextlib import suppress
from pathlib import Path

from playwright.sync_api import Error

from tests.browser.conftest import CHROMIUM, FLAGS, SECONDS, SMALL
from tests.browser.hand import open_place
from tests.browser.start.start_support import eventually, wait_until_kept
from tests.browser.words import SAVE, SAVE_TO_PROJECT, SAVED

# So many acts are done before the moment of the kill is drawn, at most so many seconds ahead.
ACTS = (0, 1)
AHEAD = 0.6
PIECES = 900
PATIENCE = 60 * SECONDS
SHOWN = """() => [...document.querySelectorAll("[data-group=readings] .entry")].map((each) => {
    const part = (name) => each.querySelector(name).textContent;
    const [over, under] = each.querySelectorAll(".fraction-stack span");
    const inches = `${part(".fraction-whole")} ${over.textContent}/${under.textContent}`;
    return [part(".entry-name"), inches + part(".fraction-unit")];
})"""
STORED = """async () => {
    const done = (asked) => new Promise((resolve, reject) => {
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
    });
    const store = await done(indexedDB.open("sawside"));
    const [record] = await done(store.transaction("projects").objectStore("projects").getAll());
    store.close();
    return record.document;
}"""


class Ledger:
    """What was entered, and what of it was shown as kept."""

    def __init__(self):
        self.entered, self.kept = {}, {}
        self.ticked = self.cut = 0
        self.lost = []

    def compare(self, seen, cut):
        """Write down what is missing or half there of `seen`, {name: text}, and of what is cut."""
        self.lost += [f"{name} is gone" for name in self.kept if name not in seen]
        self.lost += [
            f"{name}: {text}" for name, text in seen.items() if self.entered.get(name) != text
        ]
        if not self.cut <= cut <= self.ticked:
            self.lost.append(f"{cut} cut, {self.cut} shown, {self.ticked} ticked")
        # What was kept at the last moment, before it could be shown, is there from now on.
        self.kept, self.cut = dict(seen), cut


def killed(player, profile, address, count, seed):
    """Open, look, work, kill, `count` times and once more to look; gives the `Ledger`."""
    chance, ledger = random.Random(seed), Ledger()
    with suppress(Error), opened(player, profile, address) as page:
        begin(page)
    for _ in range(count):
        with opened(player, profile, address) as page:
            look(page, ledger)
            work_until_killed(page, profile, ledger, chance)
    with opened(player, profile, address) as page:
        look(page, ledger)
    return ledger


class opened:  # noqa: N801
    """The phone's browser with the profile; leaving closes what a kill has left of it."""

    def __init__(self, player, profile, address):
        self.how = player, profile, address

    def __enter__(self):
        player, profile, address = self.how
        self.context = player.chromium.launch_persistent_context(
            profile,
            executable_path=CHROMIUM,
            args=FLAGS,
            viewport={"width": SMALL[0], "height": SMALL[1]},
            has_touch=True,
            is_mobile=True,
        )
        self.context.set_default_timeout(PATIENCE)
        page = self.context.pages[0]
        page.goto(address)
        return page

    def __exit__(self, *_):
        with suppress(Error):
            self.context.close()


def begin(page):
    """Keep many pieces to cut, and wait until the page can be opened again fast."""
    wait_until_kept(page)
    page.goto(page.url.split("#")[0] + "#work-out/piece_by_hand")
    page.get_by_label("Length", exact=True).fill("14 1/2")
    page.get_by_label("How many", exact=True).fill(str(PIECES))
    page.get_by_role("button", name="Done").tap()
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep(page, "Slip")


def keep(page, name):
    """Keep what is shown; returns when the page says that it is kept."""
    page.get_by_role("button", name=SAVE_TO_PROJECT).tap()
    page.get_by_role("textbox", name="Name").fill(name)
    page.get_by_role("button", name=SAVE, exact=True).tap()
    page.locator("#notices").get_by_text(f"{SAVED} {name}.").wait_for()


def look(page, ledger):
    """Compare what the store holds with what was shown before the kill, and the screen with it."""
    slip, *readings = page.evaluate(STORED)["entries"]
    seen = {each["name"]: f"{each['text']}″" for each in readings}
    cut = len(slip.get("cut", {}).get("piece", []))
    ledger.compare(seen, cut)
    open_place(page, "Project")
    eventually(lambda: dict(page.evaluate(SHOWN)) == seen)
    open_place(page, "At the saw")
    eventually(lambda: left(page) == PIECES - cut)


def left(page):
    """How many pieces the place at the saw says are left."""
    return int(page.locator(".piece-left").text_content().split()[0])


def work_until_killed(page, profile, ledger, chance):
    """Enter readings and tick pieces; in the midst of it a thread kills the browser."""
    for _ in range(chance.randint(*ACTS)):
        act(page, ledger, chance)
    timer = threading.Timer(chance.uniform(0, AHEAD), kill, [profile])
    timer.start()
    try:
        while True:
            act(page, ledger, chance)
    except Error:
        timer.join()


def act(page, ledger, chance):
    """Keep a reading, or cut a piece."""
    if chance.random() < 0.5:
        keep_reading(page, ledger, chance)
    else:
        cut_one(page, ledger)


def keep_reading(page, ledger, chance):
    """A reading under a name of its own, in whole inches and sixteenths."""
    name = f"Reading {len(ledger.entered) + 1}"
    text = f"{chance.randint(1, 90)} {chance.randrange(1, 16, 2)}/16"
    open_place(page, "Pad")
    page.get_by_role("textbox", name="Length or sum").fill(text)
    page.locator(f'output[data-for="{text}"]:not(.waiting) .main-answer').wait_for()
    ledger.entered[name] = f"{text}″"
    keep(page, name)
    ledger.kept[name] = text


def cut_one(page, ledger):
    """Tick a piece as cut."""
    open_place(page, "At the saw")
    before = left(page)
    ledger.ticked += 1
    page.get_by_role("button", name="Cut one", exact=True).tap()
    page.get_by_text(f"{before - 1} left of {PIECES}").wait_for()
    ledger.cut += 1


def kill(profile):
    """End the browser that has this profile as a dead battery would: all its processes at once."""
    mine = [pid for pid in processes() if f"--user-data-dir={profile}" in command(pid)]
    for pid in [*mine, *(each for each in processes() if parent(each) in mine)]:
        with suppress(ProcessLookupError):
            os.kill(pid, signal.SIGKILL)
    time.sleep(0.05)


def processes():
    """The ids of what runs on this machine."""
    return [int(each.name) for each in Path("/proc").iterdir() if each.name.isdigit()]


def command(pid):
    """The command line of a process; nothing when it is gone."""
    with suppress(OSError):
        words = Path(f"/proc/{pid}/cmdline").read_bytes().split(b"\0")
        return " ".join(word.decode(errors="replace") for word in words)
    return ""


def parent(pid):
    """The id of the process that started it; nothing when it is gone."""
    with suppress(OSError):
        return int(Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[1])
    return None
