"""What a first visit does after its first answer, in processor time over that before it."""

import os
import tempfile
from pathlib import Path

from tests.bench.page import chromium
from tests.bench.page.look import marked
from tests.browser.start.start_support import FIRST_ANSWER, wait_until_kept
from web.build import serving
from web.build.environment import ROOT

PROCESSES = Path("/proc")
# The first field after the name, which may hold spaces, is the third of proc(5)'s list.
PARENT, USER, SYSTEM = 4 - 3, 14 - 3, 15 - 3


def measure():
    """Yield start.idle_ratio: keeping all for use without network, over the start itself."""
    with (
        tempfile.TemporaryDirectory() as folder,
        serving.started(ROOT / ".site") as server,
        chromium.open_phone(Path(folder) / "profile") as page,
    ):
        page.goto("about:blank")
        begun = ticks()
        page.goto(server.address)
        marked(page, FIRST_ANSWER)
        answered = ticks()
        wait_until_kept(page)
        kept = ticks()
    print("idle", answered - begun, kept - answered, flush=True)
    yield "start.idle_ratio", (kept - answered) / (answered - begun)


def ticks():
    """Processor time, in the system's ticks, of all processes that this one has begun."""
    told = {each.name: stat(each) for each in PROCESSES.iterdir() if each.name.isdigit()}
    ours, total = {str(os.getpid())}, 0
    while ours:
        begun = {each for each, fields in told.items() if fields and fields[PARENT] in ours}
        total += sum(int(told[each][USER]) + int(told[each][SYSTEM]) for each in begun)
        ours = begun
    return total


def stat(process):
    """The fields after the name of a process; none where it has just ended."""
    try:
        return (process / "stat").read_text().rpartition(")")[2].split()
    except OSError:
        return []
