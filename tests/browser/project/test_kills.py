"""What was shown as kept outlives a kill at any moment; the bench does ten times as many."""

from tests.browser.project.kills import Ledger, killed

KILLS = 20
SEED = 1


def test_after_twenty_kills_nothing_that_was_shown_as_kept_is_lost_or_half_there(
    player, server, tmp_path
):
    ledger = killed(player, tmp_path / "phone", server.address, KILLS, SEED)
    assert ledger.lost == []
    assert len(ledger.kept) >= KILLS / 4
    assert ledger.cut >= KILLS / 4


def test_the_ledger_finds_what_is_gone_half_there_or_never_entered():
    ledger = Ledger()
    ledger.entered = {"Reading 1": "3 1/16″", "Reading 2": "4 1/16″"}
    ledger.kept, ledger.cut, ledger.ticked = {"Reading 1": "3 1/16″"}, 2, 3
    ledger.compare({"Reading 1": "3 1/16″", "Reading 2": "4 1/16″"}, 3)
    assert ledger.lost == []
    ledger.compare({"Reading 2": "4 1/1″"}, 2)
    assert len(ledger.lost) == 3
