"""Random doors put together as solids and swung open by steps, by independent judges."""

from tests.bench.core.judged import judged
from tests.core.oracles.assembled_doors import check_doors
from tests.core.oracles.swung_door import check_swing

CASES = 5_000
CHECKS = (check_doors, check_doors, check_doors, check_swing)


def measure():
    """Yield doors.oracle_cases and doors.oracle_wrong."""
    yield from judged("doors", CHECKS, CASES)
