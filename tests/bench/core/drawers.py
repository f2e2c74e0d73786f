"""Random drawers, their columns and their corner joints, put together by an independent judge."""

from tests.bench.core.judged import judged
from tests.core.oracles.random_column import check_column
from tests.core.oracles.random_corners import check_box_joint, check_dovetails
from tests.core.oracles.random_drawer import check_drawer

CASES = 5_000
CHECKS = (check_drawer, check_box_joint, check_drawer, check_dovetails, check_drawer, check_column)


def measure():
    """Yield drawers.oracle_cases and drawers.oracle_wrong."""
    yield from judged("drawers", CHECKS, CASES)
