"""Whether a clearance covers what readings may be off by, worked by hand for each question.

A reading on sixteenths is off by 1/32 at most. What counts is all of the clearance, at both ends
together, and only what makes the fit tighter.
"""

import pytest
from asking import exact
from projects import acts, answered, begun

from sawside.reckoners import RECKONERS


def fit(reckoner, values, text="37 9/16", **reading):
    """What is said of the fit of a line, some of whose values use the reading [Read]."""
    document = acts(
        begun(),
        ("keep_reading", {"name": "Read", "text": text} | reading),
        (
            "keep_line",
            {"name": "Line", "reckoner": reckoner, "values": RECKONERS[reckoner].example | values},
        ),
    )
    return answered("sure", document, id="2")["fit"]


SHELF = {"width": "[Read]", "width_is": "inside", "joint": "pins"}
CASE = {"width": "", "shelf": "[Read]", "width_is": "inside", "joint": "pins"}
DADO = {"width": "[Read]", "width_is": "inside", "joint": "dado"}
FRAME = {"width": "[Read]"}


@pytest.mark.parametrize(
    ("reckoner", "values", "said"),
    [
        # 2 × 1/16 against 1/32; 2 × 1/64 is just 1/32; 2 × 1/128 is less.
        (
            "shelf_length",
            SHELF | {"gap": "1/16"},
            "Shelf length may need to be up to 1/32″ less; the total clearance of 1/8″ covers it.",
        ),
        (
            "shelf_length",
            SHELF | {"gap": "1/64"},
            "Shelf length may need to be up to 1/32″ less; the total clearance of 1/32″ "
            "just covers it, with nothing to spare.",
        ),
        (
            "shelf_length",
            SHELF | {"gap": "1/128"},
            "Shelf length may need to be up to 1/32″ less; the total clearance of 1/64″ "
            "isn’t enough for that.",
        ),
        # The shelf is there: the case may have to be wider.
        (
            "shelf_length",
            CASE | {"gap": "1/16"},
            "Inside width may need to be up to 1/32″ more; the total clearance of 1/8″ covers it.",
        ),
        # Half of an opening, and half of 3/32 + 1/8 + 3/32.
        (
            "doors",
            {"width": "[Read]"},
            "Door width may need to be up to 1/64″ less; the total clearance of 5/32″ covers it.",
        ),
        # Room at the bottom of both dadoes.
        (
            "shelf_length",
            DADO | {"play": "1/32"},
            "Shelf length may need to be up to 1/32″ less; the total clearance of 1/16″ covers it.",
        ),
        # Two sides of [Read] thick, 2 × 1/32 together, against 2 × 1/64.
        (
            "shelf_length",
            {
                "side_thickness": "[Read] - 36 13/16",
                "width_is": "outside",
                "joint": "pins",
                "gap": "1/64",
            },
            "Shelf length may need to be up to 1/16″ less; the total clearance of 1/32″ "
            "isn’t enough for that.",
        ),
        # Inside = thing + 2 × clearance − 2 × rabbet: a larger thing needs a larger frame.
        (
            "mitered_frame",
            FRAME | {"clearance": "1/16"},
            "Inside (Width) may need to be up to 1/32″ more; the total clearance of 1/8″ "
            "covers it.",
        ),
        (
            "mitered_frame",
            FRAME | {"clearance": "1/128"},
            "Inside (Width) may need to be up to 1/32″ more; the total clearance of 1/64″ "
            "isn’t enough for that.",
        ),
        # A rabbet that is 1/32 less needs 2 × 1/32 more inside.
        (
            "mitered_frame",
            {"rabbet": "[Read] - 37 3/16", "clearance": "1/16"},
            "Inside (Width) may need to be up to 1/16″ more; the total clearance of 1/8″ "
            "covers it.",
        ),
        (
            "mitered_frame",
            {"shape": "polygon", "size": "[Read]", "clearance": "1/64"},
            "Inside (Across the flats) may need to be up to 1/32″ more; the total clearance of "
            "1/32″ just covers it, with nothing to spare.",
        ),
        # One dado over one shelf: the play counts once.
        (
            "dado_layout",
            {"shelf": "[Read] - 36 13/16", "play": "1/16"},
            "Dado width may need to be up to 1/32″ more; the total clearance of 1/16″ covers it.",
        ),
    ],
)
def test_all_of_the_clearance_is_set_against_what_makes_it_tighter(reckoner, values, said):
    told = fit(reckoner, values)
    assert told["said"] == said
    assert told["covers"] is ("isn’t enough" not in said)


def test_a_panel_has_both_edges_free_at_its_dampest():
    """Red maple from 8 % grows by g: 2 × 1/64 ÷ (1 + g) of the panel against 1/32 ÷ (1 + g)."""
    values = {"opening": "[Read]", "clearance": "1/64"}
    said = fit("panel_in_its_groove", values)
    assert said["covers"] is True
    assert exact(said["clearance"]) < 1 / 32
    assert said["said"].endswith("just covers it, with nothing to spare.")
    assert fit("panel_in_its_groove", values | {"clearance": "1/128"})["covers"] is False


def test_a_fit_goes_by_the_tightest_of_several():
    """The height is read on quarters, the width is typed: only the height is unsure."""
    values = {"height": "[Read]", "clearance": "1/32"}
    said = fit("mitered_frame", values, text="20 3/4", fineness="1/4")
    assert said["answer"] == "inside.2"
    assert said["said"].startswith("Inside (Height) may need to be up to 1/8″ more;")


def test_what_only_makes_it_looser_needs_no_clearance():
    """Heavy of the mark: the true width is longer, and the shelf too short, not too long."""
    said = fit("shelf_length", SHELF | {"gap": "0"}, side="heavy")
    assert said["covers"] is True
    assert said["said"] == "No reading makes it tighter: you keep the full clearance of 0″."
    assert fit("shelf_length", SHELF | {"gap": "0"}, side="light")["covers"] is False


def test_a_case_without_a_clearance_has_no_fit():
    assert fit("shelf_length", SHELF | {"joint": "fixed"}) is None
    assert fit("mitered_frame", FRAME | {"around": "outside"}) is None
    assert fit("mitered_length", {"known": "[Read]"}) is None


def test_every_fit_names_an_answer_and_a_field_of_its_question():
    for reckoner in RECKONERS.values():
        for each in reckoner.fits:
            assert each.answer in [answer.key for answer in reckoner.answers]
            assert each.tight_when in ("less", "more")
