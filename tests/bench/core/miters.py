"""Random mitered pieces, corners, runs of molding, crown and boxes, put together as solids.

The judge builds half-spaces with vectors and shares no geometry with the questions.
"""

from tests.bench.core.judged import judged
from tests.core.oracles import (
    crown_runs,
    molding_runs,
    put_together,
    rings_together,
    sloping_boxes,
    sprung_corners,
    strips_together,
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
)


def measure():
    """Yield miters.oracle_cases and miters.oracle_wrong."""
    return judged("miters", CHECKS, CASES)
