"""A planned sheet as it is cut at the saw: sizes by hand, with kerfs of 1/8."""

from fractions import Fraction

from sawside.boards.breaking_down import Node, in_order, of_sheet, of_stick
from sawside.boards.sawing import sawn, whole_parts
from sawside.boards.sheets.plan import Cut, Part, PlannedSheet
from sawside.boards.sheets.request import Sheet

KERF = Fraction(1, 8)


def test_rips_come_first_and_equal_settings_together_the_largest_first():
    strips = [Node("crosscut", [(Fraction(30), n), (Fraction(40), n + 1)]) for n in (0, 2)]
    root = Node("rip", [(Fraction(10), strips[0]), (Fraction(12), strips[1])])
    cuts, pieces = in_order({0: root})
    assert [(cut.way, cut.at) for cut in cuts] == [
        ("rip", 12),
        ("rip", 10),
        ("crosscut", 40),
        ("crosscut", 40),
        ("crosscut", 30),
        ("crosscut", 30),
    ]
    parts = sawn(Fraction(96), Fraction(48), cuts, KERF)
    assert sorted((parts[part].length, parts[part].width, n) for part, n in pieces.items()) == [
        (30, 10, 0),
        (30, 12, 2),
        (40, 10, 1),
        (40, 12, 3),
    ]
    assert set(pieces) <= set(whole_parts(parts, cuts))


def test_the_stop_is_set_to_a_piece_and_what_is_cut_further_is_left():
    """96 − 82 13/16 − 1/8 = 13 1/16: the piece is cut off, not the rest of it."""
    long, short = Fraction(1325, 16), Fraction(209, 16)
    takes = Part(Fraction(0), Fraction(0), long, Fraction(2))
    leaves = Part(long + KERF, Fraction(0), short, Fraction(2), 0)
    sheet = Sheet(Fraction(96), Fraction(2))
    planned = PlannedSheet(sheet, True, (Cut(1, "crosscut", long, 0, takes, leaves),), ())
    node, pieces = of_sheet(planned, lambda panel: f"rail {panel}")
    assert (node.items, node.rest, pieces) == ([(short, "rail 0")], None, ["rail 0"])


def test_a_stick_that_its_pieces_fill_to_the_end_has_one_cut_less():
    full = of_stick(
        Fraction(30) + KERF + Fraction(20), [(Fraction(20), "a"), (Fraction(30), "b")], KERF
    )
    assert (full.items, full.rest) == ([(30, "b")], "a")
    assert of_stick(Fraction(20), [(Fraction(20), "a")], KERF) == "a"
    more = of_stick(Fraction(60), [(Fraction(20), "a"), (Fraction(30), "b")], KERF)
    assert (more.items, more.rest) == ([(30, "b"), (20, "a")], None)
