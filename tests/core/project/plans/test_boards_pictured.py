"""The boards of a plan as one looks at them, at the saw and on paper."""

from fractions import Fraction
from types import SimpleNamespace

from hypothesis import given
from hypothesis import strategies as st
from planned import by_hand, kept, on_hand, planned
from projects import acts, begun, changed, view

from sawside.drawing.boards.blocks import blocks_of
from sawside.drawing.boards.planned_board import Drawn, planned_board

SHEET = {"form": "sheet", "width": "48"}


def board_of(*steps):
    """The first board of a plan."""
    (group, *_) = planned(acts(begun(), *steps))["plan"]["groups"]
    return group["boards"][0]


def shapes(board, kind, role=None):
    return [
        each
        for each in board["drawing"]["shapes"]
        if each["kind"] == kind and role in {None, each["role"]}
    ]


def notes(board):
    return [each["text"] for each in shapes(board, "label")]


def test_strips_too_narrow_for_their_mark_are_told_together():
    """By hand: of 48 in. in 145 pixels a strip of 1 in. has 3; twelve with 11 kerfs of 1/8 are
    13 3/8 wide."""
    board = board_of(by_hand("Edging", "90", width="1", count="12"), on_hand(SHEET))
    [block] = shapes(board, "polygon", "stock")
    (left, top), _, (right, bottom), _ = block["points"]
    assert (right - left, bottom - top) == (90, 13.375)
    assert block["part"] == "1/piece"
    assert [text for text in notes(board) if text.startswith("12 × a")] == ["12 × a Edging"]


def test_a_name_stands_in_two_lines_where_it_has_no_room_in_one_and_else_the_mark_alone():
    """By hand: of 96 in. in some 250 pixels a piece of 40 in. has 104, eleven letters of 9."""
    board = board_of(
        by_hand("Carcass left side", "40", width="15"),
        by_hand("Dust frame runner", "9", width="15"),
        on_hand(SHEET),
    )
    named = [text for text in notes(board) if text not in {"96″", "48″", "grain →"}]
    assert "a Carcass" in named
    assert named[named.index("a Carcass") + 1] == "left side"
    assert "b" in named
    assert not any("Dust" in text for text in named)


def test_small_pieces_are_told_together_and_none_is_lost():
    """By hand: what is drawn of 60 pieces of 3 by 2 is their area and that of the kerfs between."""
    board = board_of(by_hand("Block", "3", width="2", count="60"), on_hand(SHEET))
    told = [text for text in notes(board) if " a" in text]
    assert sum(int(text.split(" × ")[0]) for text in told) == 60
    area = 0
    for block in shapes(board, "polygon", "stock"):
        (left, top), _, (right, bottom), _ = block["points"]
        area += (right - left) * (bottom - top)
    assert 60 * 3 * 2 <= area <= 60 * (3 + 1 / 8) * (2 + 1 / 8)


def test_pieces_of_a_stick_are_as_high_as_the_stick():
    """One that is told no width, as its profile has it."""
    rails = [
        Drawn(Fraction(17 * n), Fraction(0), Fraction(16), None, "stock", "a") for n in range(3)
    ]
    board = {"drawing": planned_board("A stick.", (Fraction(96), None, ("96″", ""), ""), rails)}

    def heights(role):
        return {
            max(y for _, y in each["points"]) - min(y for _, y in each["points"])
            for each in shapes(board, "polygon", role)
        }

    assert heights("stock") == heights("waste")


def test_pieces_that_are_cut_have_a_check_mark_and_are_never_told_with_others():
    document = kept(
        acts(
            begun(),
            by_hand("Strip", "60", width="1", count="4"),
            on_hand({"form": "sheet", "width": "48"}),
        )
    )
    document = changed(document, "cut", id="1", part="piece", by=1)
    board = view(document)["plan"]["groups"][0]["boards"][0]
    assert len(shapes(board, "polygon", "hatch")) == 1
    assert sorted(text.split()[0] for text in notes(board) if "a" in text.split()) == ["3", "a"]
    assert any(text.startswith("a ✓") for text in notes(board))


def test_the_next_cut_is_drawn_across_what_it_cuts():
    """By hand: the first cut takes 30 1/4 off the end of a board 2 1/4 wide; once it is made the
    next is a kerf and 16 1/2 farther."""
    document = kept(
        acts(
            begun(),
            by_hand("Stile", "30 1/4"),
            by_hand("Rail", "16 1/2", count="2"),
            on_hand({"width": "2 1/4"}),
        )
    )

    def next_cut(document):
        board = view(document)["plan"]["groups"][0]["boards"][0]
        return [line["from"][0] for line in shapes(board, "line", "cut")], board

    places, board = next_cut(document)
    assert places == [30.25]
    assert "first cut" in notes(board)
    document = changed(document, "cut", id="1", part="piece", by=1)
    places, board = next_cut(document)
    assert places == [46.875]
    assert "next cut" in notes(board)
    for _ in range(2):
        document = changed(document, "cut", id="2", part="piece", by=1)
    assert next_cut(document)[0] == []


def test_offcuts_tell_their_size_where_it_has_room():
    board = board_of(by_hand("Side", "36", width="30"), on_hand(SHEET))
    assert any(size in notes(board) for size in board["offcuts"])


def test_a_sheet_says_which_way_its_grain_runs_and_a_board_drawn_wider_says_so():
    sheet = board_of(by_hand("Side", "36", width="30"), on_hand(SHEET))
    assert "grain →" in notes(sheet)
    board = board_of(by_hand("Strip", "30", width="1/2", count="3"), on_hand({"width": "5"}))
    assert "drawn wider" in notes(board)
    assert "grain →" not in notes(board)


def test_a_heading_starts_with_a_capital_whatever_the_wood_is_called():
    steps = by_hand("Rail", "16 1/2"), on_hand({"width": "2 1/4", "material": "cherry"})
    [group] = planned(acts(begun(), *steps))["plan"]["groups"]
    assert group["material"] == "Cherry, 3/4″ thick"


@given(st.sets(st.tuples(st.integers(0, 5), st.integers(0, 5)), min_size=1))
def test_each_piece_of_a_grid_is_in_one_block_and_each_block_is_full_of_pieces(cells):
    """Pieces of 3 by 2 a kerf of 1/8 apart, some of them left out; counted cell by cell."""
    across, down = Fraction(25, 8), Fraction(17, 8)
    pieces = [
        SimpleNamespace(x=column * across, y=row * down, length=Fraction(3), width=Fraction(2))
        for column, row in cells
    ]
    found = [
        (column / across, row / down)
        for block in blocks_of(pieces, lambda each: (each.length, each.width))
        for column in block.columns
        for row in block.rows
    ]
    assert sorted(found) == sorted(cells)
    assert all(block.count == 1 for block in blocks_of(pieces, lambda each: None))
