"""What the tests of the start look at: how the core came up, and its snapshot."""

import threading
import time
from contextlib import suppress

from playwright.sync_api import Error

from tests.browser.hand import tap_keys
from tests.browser.words import READY_OFFLINE
from web.build import serving

FIRST_ANSWER = "sawside:first-answer"
SNAPSHOT_KEPT = "sawside:snapshot-kept"
WAIT = 90


def open_at(context, address):
    """Open the site in the browser's only page."""
    page = context.pages[0]
    page.goto(address)
    return page


def eventually(look, *, within=WAIT):
    """Return what `look` gives once that is true; fails after `within` seconds.

    A page that is just being left can't be looked at: that is tried again as well.
    """
    last = time.monotonic() + within
    while True:
        with suppress(Error):
            if seen := look():
                return seen
        assert time.monotonic() < last, f"not seen within {within} s"
        time.sleep(0.1)


def way_of_start(page):
    """How the core that gave the first answer was started: "snapshot" or "slow"."""
    mark = "name => performance.getEntriesByName(name)[0]?.detail.way ?? null"
    return eventually(lambda: page.evaluate(mark, FIRST_ANSWER))


def wait_for_snapshot(page):
    """Until the page says that a snapshot is stored."""
    mark = "name => performance.getEntriesByName(name).length"
    eventually(lambda: page.evaluate(mark, SNAPSHOT_KEPT))


def wait_until_kept(page):
    """Until every file is on the device, and a snapshot with them."""
    eventually(lambda: READY_OFFLINE in page.locator("#notices").text_content())
    wait_for_snapshot(page)


def answers_rightly(page):
    """Type a sum and see its answer: 31 5/8 + 2 1/4 = 33 7/8."""
    page.get_by_role("textbox", name="Length or sum").fill("")
    tap_keys(page, "31 5/8+2 1/4")
    answer = page.locator("output[name=pad-answer]")
    answer.get_by_text("thirty-three and seven eighths inches").wait_for()


PAGE = {"styles.css", "shared.js", "begin.js", "main.js"}


class RecordingServer(serving.Server):
    """A server that notes what it sent: (path, status) in order."""

    def __init__(self, folder, port=0):
        super().__init__(folder, port)
        self.sent = []
        self.cut = None
        self.withheld = None
        self.lost_at = None
        self.is_lost = False
        self.RequestHandlerClass = RecordingHandler
        self._thread = threading.Thread(target=self.serve_forever, args=(0.05,), daemon=True)
        self._thread.start()

    def whole_files(self):
        """The paths that were sent with their content, as often as they were."""
        return [path for path, status in self.sent if status == 200]


class RecordingHandler(serving.Handler):
    """Notes every answer; withholds one, or breaks it off half-way, as long as the server says.

    From the file `lost_at` on nothing is answered any more, as when the network goes. It goes when
    all else of the page is sent, for files are asked for side by side.
    """

    def parse_request(self):
        parsed = super().parse_request()
        if self.server.lost_at and self.path.endswith(self.server.lost_at):
            others = PAGE - {self.server.lost_at}
            eventually(lambda: others <= set(self.server.whole_files()))
            self.server.is_lost = True
        self.close_connection |= self.server.is_lost
        return parsed and not self.server.is_lost

    def log_request(self, code="-", size="-"):
        self.server.sent.append((self.path.lstrip("/").split("?")[0], int(code)))

    def do_GET(self):  # noqa: N802
        if self.server.cut and self.path.endswith(self.server.cut):
            self.server.sent.append((self.path.lstrip("/"), 0))
            self._half()
        elif self.server.withheld and self.path.endswith(self.server.withheld):
            self.send_error(503)
        else:
            super().do_GET()

    def _half(self):
        content = self._file().read_bytes()
        self.send_response_only(200)
        self.send_header("Content-Type", "application/wasm")
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        self.wfile.write(content[: len(content) // 2])
        self.close_connection = True
