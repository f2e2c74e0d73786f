"""The figures of the bench: each written down as it comes, and what crashed begun again.

An engine that dies is no fault of Sawside. It costs a new try, so many at most, and never a figure
that was there.
"""

import json
import os
import traceback

from playwright.sync_api import Error
from selenium.common.exceptions import TimeoutException, WebDriverException
from urllib3.exceptions import HTTPError

CRASHES = (Error, WebDriverException, HTTPError, ConnectionError)
"""What the drivers raise when an engine, or the driver itself, is gone."""

TRIES = 3
BEGUN_AGAIN = "bench.begun_again"


class Figures:
    """Numbers by name, and the file that always holds all of them as one flat JSON object."""

    def __init__(self, path):
        self.numbers, self.failed = {}, []
        self._path = path
        self.put(BEGUN_AGAIN, 0)

    def put(self, name, number):
        """Write one down; the file is replaced whole, so that it can be read at any moment."""
        self.numbers[name] = round(number, 4)
        beside = self._path.with_name(f"{self._path.name}.new")
        beside.write_text(json.dumps(self.numbers, indent=1) + "\n")
        os.replace(beside, self._path)
        print(f"{name}: {self.numbers[name]}", flush=True)

    def take(self, name, measure):
        """Write down what `measure()` yields, each (name, number) as it comes.

        After a crash it is begun again; what fails otherwise, or crashes every time, is in `failed`
        and takes nothing with it.
        """
        for left in reversed(range(TRIES)):
            try:
                for figure in measure():
                    self.put(*figure)
                return
            except Exception as fault:
                traceback.print_exc()
                if not (left and is_crash(fault)):
                    self.failed.append(name)
                    return
                self.put(BEGUN_AGAIN, self.numbers[BEGUN_AGAIN] + 1)


def is_crash(fault):
    """Whether an engine is gone; one that keeps silent too long is not, and hides no hang."""
    return isinstance(fault, CRASHES) and not isinstance(fault, TimeoutException)
