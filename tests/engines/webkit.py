"""WebKit at phone size, driven over WebDriver on a screen that nobody sees."""

import os
import subprocess
from pathlib import Path

from selenium import webdriver
from selenium.common.exceptions import WebDriverException
from selenium.webdriver.webkitgtk.options import Options
from selenium.webdriver.webkitgtk.service import Service

from tests.engines.session import PATIENCE, Session

WINDOW = Path(__file__).with_name("webkit_window.py")
# The Python of the system has GTK; -I keeps it free of what our own environment sets.
PYTHON = "/usr/bin/python3"
DRIVER = "/usr/bin/WebKitWebDriver"
SCREEN = "1000x1000x24"
# One of the engine's compilers is left out: it takes longer than the code it makes better.
QUICKER = {"JSC_useOMGJIT": "0"}
AWAITED = """
const [value, done] = arguments;
Promise.resolve(({script})(value)).then((given) => done([given, null]),
  (error) => done([null, String(error)]));
"""
# The driver works out where to click before it clicks: by then nothing may move any more.
STILL = """
async (element) => {
  element.scrollIntoView({ block: "nearest" });
  const frame = () => new Promise(requestAnimationFrame);
  const place = () => JSON.stringify(element.getBoundingClientRect());
  for (let seen = null, same = 0; same < 3; ) {
    await frame();
    same = place() === seen ? same + 1 : 0;
    seen = place();
  }
}
"""


def open_phone(profile, size):
    """Open WebKit with the folder `profile` and a window of `size`, (width, height) in px."""
    return WebKit(profile, size)


class WebKit(Session):
    """A window with the engine of Safari, and the screen it is on."""

    changed = WebDriverException

    def __init__(self, profile, size):
        self._screen, display = start_screen()
        options = Options()
        options.set_capability("browserName", "phone")  # as webkit_window.py says it is called
        options.binary_location = PYTHON
        for each in ("-I", WINDOW, "--automation", profile, *size):
            options.add_argument(str(each))
        variables = {**os.environ, **QUICKER, "DISPLAY": display}
        service = Service(executable_path=DRIVER, env=variables)
        try:
            self._driver = webdriver.WebKitGTK(options=options, service=service)
        except WebDriverException:
            stop(self._screen)
            raise
        self._driver.set_script_timeout(PATIENCE)
        self._driver.set_page_load_timeout(PATIENCE)

    def goto(self, url):
        """Load `url`."""
        self._driver.get(url)

    def evaluate(self, script, value=None):
        """Call the JavaScript function `script` with `value`; gives what its promise gives."""
        awaited = AWAITED.replace("{script}", script)
        given, error = self._driver.execute_async_script(awaited, value)
        if error:
            raise WebDriverException(error)
        return given

    def element(self, script, value):
        """The element that the function `script` returns, once it has come to rest, or None."""
        found = self._driver.execute_script(f"return ({script})(arguments[0])", value)
        if found:
            self.evaluate(STILL, found)
        return found

    def write(self, element, text):
        """Type `text` on the keyboard in place of what the field `element` holds."""
        element.clear()
        element.send_keys(text)

    def close(self):
        """Close the browser; its profile stays."""
        try:
            self._driver.quit()
        finally:
            stop(self._screen)


def start_screen():
    """Start a screen; returns its process and its name."""
    read, write = os.pipe()
    command = ["Xvfb", "-displayfd", str(write), "-screen", "0", SCREEN, "-nolisten", "tcp"]
    screen = subprocess.Popen(command, pass_fds=[write], stderr=subprocess.DEVNULL)
    os.close(write)
    with os.fdopen(read) as said:
        return screen, f":{said.readline().strip()}"


def stop(process):
    """End a process and wait for its end."""
    process.terminate()
    process.wait()
