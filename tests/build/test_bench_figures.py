"""The bench keeps every figure that was had, whatever dies on the way to the next one."""

import json
import sys

import pytest
from playwright.sync_api import Error
from selenium.common.exceptions import InvalidSessionIdException, TimeoutException
from urllib3.exceptions import MaxRetryError

from tests.bench import __main__ as bench
from tests.bench.figures import BEGUN_AGAIN, TRIES, Figures

GONE = [
    Error("Target page, context or browser has been closed"),
    InvalidSessionIdException(),
    MaxRetryError(None, "/session", None),
    ConnectionResetError(),
]


@pytest.fixture
def written(tmp_path):
    """A file for figures, and what stands in it now."""
    path = tmp_path / "bench.json"
    return path, lambda: json.loads(path.read_text())


def test_each_figure_is_in_the_file_as_soon_as_it_comes(written):
    path, read = written
    seen = []

    def measure():
        yield "start.one", 1.23456
        seen.append(read())
        yield "start.two", 2
        seen.append(read())

    Figures(path).take("start", measure)
    assert seen[0] == {BEGUN_AGAIN: 0, "start.one": 1.2346}
    assert seen[1] == read() == {BEGUN_AGAIN: 0, "start.one": 1.2346, "start.two": 2}


@pytest.mark.parametrize("gone", GONE, ids=lambda fault: type(fault).__name__)
def test_what_an_engine_took_with_it_is_begun_again(written, gone):
    path, read = written
    faults = [gone] * (TRIES - 1)

    def measure():
        yield "start.chromium", 1
        if faults:
            raise faults.pop()
        yield "start.webkit", 2

    figures = Figures(path)
    figures.take("start", measure)
    assert read() == {BEGUN_AGAIN: TRIES - 1, "start.chromium": 1, "start.webkit": 2}
    assert not figures.failed


@pytest.mark.parametrize(
    ("fault", "tries"),
    [(GONE[1], TRIES), (AssertionError(), 1), (TimeoutException(), 1), (TimeoutError(), 1)],
    ids=lambda each: type(each).__name__,
)
def test_only_a_crash_is_begun_again_and_so_many_times_at_most(written, fault, tries):
    path, read = written
    begun = []

    def measure():
        begun.append(True)
        yield "start.chromium", 1
        raise fault

    figures = Figures(path)
    figures.take("start", measure)
    figures.take("keys", lambda: [("key.presses", 3)])
    assert len(begun) == tries
    assert figures.failed == ["start"]
    assert read() == {BEGUN_AGAIN: tries - 1, "start.chromium": 1, "key.presses": 3}


def test_a_file_that_can_not_be_replaced_whole_stays_as_it_was(written, monkeypatch):
    path, read = written
    figures = Figures(path)
    figures.put("start.one", 1)

    def no_room(*_):
        raise OSError("no room")

    monkeypatch.setattr("os.replace", no_room)
    with pytest.raises(OSError, match="no room"):
        figures.put("start.two", 2)
    assert read() == {BEGUN_AGAIN: 0, "start.one": 1}


def test_the_bench_goes_on_after_what_can_not_be_measured_and_says_so(written, monkeypatch, capsys):
    path, read = written

    def hopeless():
        yield "relaunch.one", 1
        raise GONE[1]

    measures = {"relaunch.one": hopeless, "door": lambda: [("door.internal", 0)]}
    monkeypatch.setattr(bench, "MEASURES", measures)
    monkeypatch.setattr(sys, "argv", ["bench", "--json", str(path)])
    assert bench.main() == 1
    assert read() == {BEGUN_AGAIN: TRIES - 1, "relaunch.one": 1, "door.internal": 0}
    assert "Not measured: relaunch.one" in capsys.readouterr().err


def test_every_engine_and_module_of_the_bench_is_measured_for_itself():
    names = {name.partition(".")[0] for name in bench.MEASURES}
    assert names == {
        "relaunch",
        "first_visit",
        "growth",
        "idle",
        "keys",
        "hand",
        "lengths",
        "miters",
        "shelves",
        "case",
        "doors",
        "drawers",
        "boards",
        "sheets",
        "project",
        "door",
        "kills",
    }
    assert sum(name.startswith("relaunch.") for name in bench.MEASURES) == 3
