"""Random mitered pieces, corners, moldings, on cases too, crown and boxes, put together as solids.

The judge builds half-spaces with vectors and shares no geometry with the questions.
"""

from tests.bench.core.judged import judged
from tests.core.oracles import (
    crown_runs,
    crowned_cases,
    molding_runs,
    put_together,
    rings_together,
    sloping_boxes,
    sprung_corners,
    strips_together,
    wrapped_cases,
)

CASES = 10_000
CHECKS = (
    *put_together.CHECKS,
    *rings_together.CHECKS,
    *molding_runs.CHECKS,
    *strips_together.CHECKS,
    *sprung_corners.CHECKS,
    *crown_runs.CHECKS,
    *sloping_boxes.CHECKS,
    *wrapped_cases.CHECKS,
    *crowned_cases.CHECKS,
)


def measure():
    """Yield miters.oracle_cases and miters.oracle_wrong."""
    return judged("miters", CHECKS, CASES)
