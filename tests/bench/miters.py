"""Random mitered pieces, corners and frames, put together as solids: how many do not fit.

The judge builds half-spaces with vectors and shares no geometry with the questions.
"""

import random

from tests.core import put_together, wraps_together

CASES = 10_000
CHECKS = put_together.CHECKS + wraps_together.CHECKS


def measure():
    """Return miters.oracle_cases, and how many of them were wrong: miters.oracle_wrong."""
    wrong = 0
    for number in range(CASES):
        check = CHECKS[number % len(CHECKS)]
        faults = check(random.Random(f"bench {number}"))
        wrong += bool(faults)
        for fault in faults:
            print(f"{check.__name__}: {fault}", flush=True)
    return {"miters.oracle_cases": CASES, "miters.oracle_wrong": wrong}
