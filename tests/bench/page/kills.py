"""Two hundred kills: what was shown as kept is there again, and nothing half.

See `tests/browser/project/kills.py`.
"""

import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

from tests.bench.page import plain
from tests.browser.project.kills import killed
from web.build import serving

KILLS = 200
SEED = 2


def measure():
    """Yield how often the browser was killed, and how much was lost."""
    with (
        tempfile.TemporaryDirectory() as folder,
        serving.started(plain.ROOT / ".site") as server,
        sync_playwright() as player,
    ):
        ledger = killed(player, Path(folder) / "phone", server.address, KILLS, SEED)
    for each in ledger.lost:
        print(f"lost: {each}", flush=True)
    yield "kills.count", KILLS
    yield "kills.lost", len(ledger.lost)
