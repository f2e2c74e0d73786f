"""The relaunch in WebKit, over the plain page in the same browser, without the site's server."""

import os
import subprocess
import tempfile
import time
from contextlib import contextmanager
from pathlib import Path
from statistics import median

from selenium import webdriver
from selenium.webdriver.webkitgtk.options import Options
from selenium.webdriver.webkitgtk.service import Service

from tests.bench import plain
from tests.bench.look import FIRST_ANSWER, SNAPSHOT_KEPT, marked, way
from web.build import serving

ROUNDS = 7
PHONE = Path(__file__).with_name("webkit_phone.py")
DRIVER = "/usr/bin/WebKitWebDriver"


def measure():
    """Return start.relaunch_ratio_webkit, from medians of interleaved rounds."""
    ours, others = [], []
    with (
        tempfile.TemporaryDirectory() as folder,
        screen() as display,
        serving.started(plain.make(Path(folder) / "plain")) as compared,
    ):
        with serving.started(plain.ROOT / ".site") as server, browser(folder, display) as timed:
            address = server.address
            timed(address, SNAPSHOT_KEPT)
            timed(compared.address, plain.FIRST_ANSWER)
        with browser(folder, display) as timed:
            for _round in range(ROUNDS):
                others.append(timed(compared.address, plain.FIRST_ANSWER)[0])
                milliseconds, start = timed(address, FIRST_ANSWER)
                assert start == "snapshot"
                ours.append(milliseconds)
    print("webkit", [round(each) for each in ours], [round(each) for each in others], flush=True)
    return {"start.relaunch_ratio_webkit": median(ours) / median(others)}


@contextmanager
def screen():
    """A screen that nobody sees; gives its name."""
    read, write = os.pipe()
    command = ["Xvfb", "-displayfd", str(write), "-screen", "0", "1000x1000x24", "-nolisten", "tcp"]
    server = subprocess.Popen(command, pass_fds=[write], stderr=subprocess.DEVNULL)
    os.close(write)
    with os.fdopen(read) as said:
        number = said.readline().strip()
    try:
        yield f":{number}"
    finally:
        server.terminate()
        server.wait()


@contextmanager
def browser(folder, display):
    """A browser whose profile is kept in `folder`; gives a function that times a page."""
    options = Options()
    options.binary_location = str(PHONE)
    options.add_argument("--automation")
    # One of the engine's compilers is left out: it takes longer than the code it makes better.
    settings = {"DISPLAY": display, "WEBKIT_DATA": f"{folder}/profile", "JSC_useOMGJIT": "0"}
    service = Service(executable_path=DRIVER, env={**os.environ, **settings})
    driver = webdriver.WebKitGTK(options=options, service=service)
    driver.set_script_timeout(60)

    def evaluate(script, name):
        return driver.execute_script(f"return ({script})(arguments[0])", name)

    def timed(address, name):
        driver.get("about:blank")
        driver.get(address)
        milliseconds = marked(evaluate, name)
        start = way(evaluate) if name == FIRST_ANSWER else None
        time.sleep(0.5)
        return milliseconds, start

    try:
        yield timed
    finally:
        driver.quit()
