"""What a plan's cuts say where wood is bad, and where a part is thin. By hand, kerf 1/8.

Bad from 30 to 34: the blade goes into it at 30, and again so that 34 is left: 34 − 30 1/8 = 3 7/8.
"""

from planned import by_hand, on_hand, planned, said_of
from projects import acts, begun

BAD = {"width": "2 1/4", "bad": "30 to 34"}


def cuts_of(document):
    """(what is said, what goes back on the pile) of each cut of the first board."""
    told = planned(document)["plan"]["groups"][0]["boards"][0]
    return [(cut["said"], cut["pile"]) for cut in told["cuts"]]


def test_good_wood_on_both_sides_of_bad_wood_is_crosscut_clear_of_it():
    document = acts(begun(), on_hand(BAD), by_hand("Rail", "29"), by_hand("Long", "61"))
    assert said_of(planned(document)["plan"])["Board 1"] == [
        "Crosscut at 30″, clear of the bad wood.",
        "Crosscut 3 7/8″ of bad wood off the end.",
        "Set the stop to 61″. Crosscut 1: Long.",
        "Set the stop to 29″. Crosscut 1: Rail.",
    ]


def test_good_wood_before_bad_wood_goes_back_on_the_pile():
    document = acts(begun(), on_hand(BAD), by_hand("Rail", "50"))
    assert cuts_of(document)[:2] == [
        ("Crosscut at 30″, clear of the bad wood.", "30″ × 2 1/4″ offcut"),
        ("Crosscut 3 7/8″ of bad wood off the end.", ""),
    ]


def test_good_wood_behind_bad_wood_goes_back_on_the_pile():
    document = acts(begun(), on_hand(BAD | {"bad": "40 to 44"}), by_hand("Rail", "40"))
    assert cuts_of(document) == [
        ("Crosscut at 40″, clear of the bad wood. Off comes Rail.", ""),
        ("Crosscut 3 7/8″ of bad wood off the end.", "52″ × 2 1/4″ offcut"),
    ]


def test_bad_ends_are_trimmed():
    document = acts(begun(), on_hand(BAD | {"bad": "0 to 3, 90 to 96"}), by_hand("Rail", "80"))
    assert [said for said, _ in cuts_of(document)] == [
        "Trim 3″ off one end.",
        "Trim the other end at 87″.",
        "Set the stop to 80″. Crosscut 1: Rail.",
    ]


def test_a_strip_too_thin_for_the_fence_side_is_taken_off_the_far_side():
    board = {"width": "5 1/2"}
    document = acts(begun(), on_hand(board), by_hand("Edging", "96", "1/4", count="3"))
    assert [said for said, _ in cuts_of(document)] == [
        "Rip 3 at 1/4″: 3 × Edging. Too thin for the fence side: take each off the far side of "
        "the blade, the wide part at the fence, and move the fence for the next."
    ]


def test_a_part_narrower_than_the_blade_is_named_with_what_to_check():
    document = acts(begun(), on_hand({"width": "5 1/2"}), by_hand("Edging", "96", "1/16"))
    assert planned(document)["plan"]["note"].startswith(
        "Edging is no wider than the blade cuts, 1/8″: check its size, and the kerf in Settings."
    )
