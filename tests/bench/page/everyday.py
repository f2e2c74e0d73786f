"""Everyday jobs, with a plain calculator and with Sawside: keys and mental steps, all counted.

`everyday_jobs.csv` has each key of both, a space between two, and each mental step, a semicolon
between two. Keys and steps are weighed by the keystroke-level model (Card, Moran, Newell,
Communications of the ACM 23(7), 1980): a key takes .28 s, a mental step 1.35 s. What both do alike
is left out: measuring, reading the result, writing it on the board. A plain calculator has a memory
and no fractions; for a corner it has to be a scientific one. Sawside begins on its pad: a key
stands as its label, [Solve] for whatever else is pressed, [field:Stick] for a field, and
tests/browser/questions/test_everyday_jobs.py presses them all.
"""

import csv
from dataclasses import dataclass
from pathlib import Path

TABLE = Path(__file__).parent / "everyday_jobs.csv"
KEY, STEP = 0.28, 1.35
"""Seconds."""


@dataclass(frozen=True)
class Job:
    """A job, the keys of both, and the steps that a head does beside them."""

    name: str
    calculator_keys: tuple[str, ...]
    calculator_steps: tuple[str, ...]
    keys: tuple[str, ...]
    steps: tuple[str, ...]
    answer: str
    """What Sawside then shows first."""

    @property
    def share(self):
        """What of the calculator's time Sawside needs."""
        ours = _seconds(self.keys, self.steps)
        return ours / _seconds(self.calculator_keys, self.calculator_steps)


def _seconds(keys, steps):
    return len(keys) * KEY + len(steps) * STEP


def jobs():
    """Every `Job` of the table."""
    with TABLE.open(encoding="utf-8", newline="") as lines:
        return [_job(row) for row in csv.DictReader(lines)]


def _job(row):
    keys = (tuple(row[column].split()) for column in ("calculator_keys", "keys"))
    steps = (
        tuple(filter(None, map(str.strip, row[column].split(";"))))
        for column in ("calculator_steps", "steps")
    )
    theirs, ours = keys
    their_steps, our_steps = steps
    return Job(row["job"], theirs, their_steps, ours, our_steps, row["answer"])
