"""Random cases put together from their parts and joints, as boxes, by an independent judge."""

from tests.bench.core.judged import judged
from tests.core.oracles.judged_case import check_case

CASES = 5_000


def measure():
    """Yield case.oracle_cases and case.oracle_wrong."""
    yield from judged("case", (check_case,), CASES)
