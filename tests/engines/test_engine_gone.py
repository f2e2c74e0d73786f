"""An engine that dies raises what the bench begins again for; its phone can be opened again."""

import os
import signal
from pathlib import Path

import pytest

from tests.bench.figures import is_crash
from tests.engines import firefox, webkit

SIZE = (412, 915)
ENGINES = {
    "firefox": (firefox, "firefox"),
    "webkit, its window": (webkit, "webkit_window.py"),
    "webkit, its page": (webkit, "WebKitWebProcess"),
}


def below(process):
    """The processes that one started, and those that they did."""
    for children in Path(f"/proc/{process}/task").glob("*/children"):
        for child in children.read_text().split():
            yield int(child)
            yield from below(child)


def kill(called):
    """End those of our own processes that have this in their command; gives how many."""
    found = [
        each
        for each in below(os.getpid())
        if called in Path(f"/proc/{each}/cmdline").read_bytes().decode().replace("\0", " ")
    ]
    for each in found:
        os.kill(each, signal.SIGKILL)
    return len(found)


@pytest.mark.parametrize(("engine", "called"), ENGINES.values(), ids=ENGINES)
def test_an_engine_that_dies_is_told_from_a_page_that_fails(engine, called, server, tmp_path):
    def visit(then):
        with engine.open_phone(tmp_path / "phone", SIZE) as phone:
            phone.goto(server.address)
            then()
            return phone.evaluate("() => document.title")

    with pytest.raises(Exception) as gone:  # noqa: PT011 (what it is, is what is asked)
        visit(lambda: kill(called) or pytest.fail("nothing was killed"))
    assert is_crash(gone.value), gone
    assert visit(lambda: None)
