"""Firefox at phone size, driven over WebDriver BiDi."""

from concurrent.futures import ThreadPoolExecutor

from playwright.sync_api import Error, sync_playwright

from tests.engines.session import PATIENCE, Session

BROWSER = {"channel": "moz-firefox", "executable_path": "/usr/bin/firefox-esr"}
SECONDS = 1000
# A touch is tried again by the session; it need not be waited for here as well.
TOUCH = 2 * SECONDS


def open_phone(profile, size):
    """Open Firefox with the folder `profile` and a page of `size`, (width, height) in px."""
    return Firefox(profile, size)


class Firefox(Session):
    """A Firefox of its own thread: one thread can't hold two of Playwright's event loops."""

    changed = Error

    def __init__(self, profile, size):
        self._thread = ThreadPoolExecutor(max_workers=1)
        self._do(self._open, profile, dict(zip(("width", "height"), size, strict=True)))

    def _do(self, work, *given, **named):
        return self._thread.submit(work, *given, **named).result()

    def _open(self, profile, viewport):
        self._player = sync_playwright().start()
        try:
            launch = self._player.firefox.launch_persistent_context
            self._context = launch(profile, viewport=viewport, **BROWSER)
        except Error:
            self._player.stop()
            raise
        self._context.set_default_timeout(PATIENCE * SECONDS)
        self._page = self._context.pages[0]

    def goto(self, url):
        """Load `url`."""
        self._do(self._page.goto, url)

    def evaluate(self, script, value=None):
        """Call the JavaScript function `script` with `value`; gives what its promise gives."""
        return self._do(self._page.evaluate, script, value)

    def element(self, script, value):
        """The element that the function `script` returns, or None."""
        found = self._do(self._page.evaluate_handle, script, value).as_element()
        return found and Touched(found, self._do)

    def write(self, element, text):
        """Type `text` on the keyboard in place of what the field `element` holds."""
        element.write(text)

    def close(self):
        """Close the browser; its profile stays."""
        self._do(self._context.close)
        self._do(self._player.stop)
        self._thread.shutdown()


class Touched:
    """An element, touched from the browser's thread."""

    def __init__(self, handle, do):
        self._handle = handle
        self._do = do

    def click(self):
        """Scroll it into sight and click its middle."""
        self._do(self._handle.click, timeout=TOUCH)

    def write(self, text):
        """Empty the field and type into it, a key at a time."""
        self._do(self._handle.fill, "", timeout=TOUCH)
        self._do(self._handle.type, text)
