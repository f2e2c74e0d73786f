"""Random shelves: their places by a case built up by hand, their sag by an independent beam."""

from tests.bench.judged import judged
from tests.core import loaded_shelf, spaced_shelves

CASES = 10_000
CHECKS = (*spaced_shelves.CHECKS, *3 * loaded_shelf.CHECKS)
"""The sag more often than each way of spacing: so many things go into it."""


def measure():
    """Return shelves.oracle_cases and shelves.oracle_wrong."""
    return judged("shelves", CHECKS, CASES)
