"""How quickly and rightly a project follows a correction, and how files gone wrong are met."""

import random

from tests.bench.core import recompute, recompute_case
from tests.bench.core.inside import inside_pyodide
from tests.core.hostile import crashes
from tests.core.oracles.hostile_memory import BOMBS, looked_at
from tests.core.oracles.spreadsheet import faults

FILES = 10_000
PROJECTS = 3000


def measure():
    """Yield the times inside Pyodide (node's engine is Chromium's), and what went wrong.

    `project.settings_told_over_alone` is a change of settings with all that follows, over the same
    without telling it; `project.case_over_plain` is the time until 60 linked lines of cases are
    worked out again over that for as many plain ones, and `project.case_less_plain_ms` how much
    longer it takes; `project.oracle_wrong` counts random projects that a small spreadsheet works
    out otherwise; `hostile.memory_of_bound` is the most of the memory that a file may take that one
    took.
    """
    times = inside_pyodide(recompute.__file__, "recomputed()")
    questions, sums, settings = times["questions"], times["sums"], times["settings"]
    yield "project.recompute_500_ms", questions["500"]
    yield "project.recompute_5000_over_500", questions["5000"] / questions["500"]
    yield "project.recompute_500_sums_ms", sums["500"]
    yield "project.recompute_5000_over_500_sums", sums["5000"] / sums["500"]
    yield "project.change_500_ms", questions["message"]
    yield "project.change_500_sums_ms", sums["message"]
    yield "project.settings_8_irrational_ms", settings["told"]
    yield "project.settings_told_over_alone", settings["told"] / settings["alone"]
    case = inside_pyodide(recompute_case.__file__, "compared()")
    yield "project.case_over_plain", case["case"] / case["plain"]
    yield "project.case_less_plain_ms", case["case"] - case["plain"]
    found = crashes(FILES, "bench")
    for message, fault in found[:20]:
        print(f"hostile: {message}: {fault}", flush=True)
    yield "hostile.files", FILES
    yield "hostile.crashes", len(found)
    yield "hostile.memory_of_bound", max(looked_at(bomb())[1] for bomb in BOMBS.values())
    wrong = 0
    for number in range(PROJECTS):
        said = [*faults(random.Random(f"bench {number}"))]
        wrong += bool(said)
        for fault in said:
            print(f"project: {fault}", flush=True)
    yield "project.oracle_projects", PROJECTS
    yield "project.oracle_wrong", wrong
