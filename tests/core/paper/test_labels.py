"""Labels lie in the person's own grid of stickers, one for each piece, and stay inside it."""

from fractions import Fraction

import pytest
from asking import errors
from hypothesis import given, settings
from hypothesis import strategies as st

import sawside

SIZES = {"letter": (215.9, 279.4), "a4": (210, 297)}  # ANSI/ASME Y14.1, ISO 216; from memory


def change(document, **act):
    """The document after an act, which must succeed."""
    said = sawside.handle({"do": "change", "document": document, "act": act})
    assert said["ok"], said
    return said["document"]


def cabinet(rails=1):
    """A record cabinet with mitered rails."""
    document = change(None, act="begin", name="Record cabinet")
    for number in range(1, rails + 1):
        values = {"known": f"{20 + number}", "width": "2 1/4"}
        document = change(
            document,
            act="keep_line",
            name=f"Rail {number}",
            reckoner="mitered_length",
            values=values,
        )
    return document


def ask(document, paper="a4", **values):
    return sawside.handle({"do": "labels", "document": document, "paper": paper, "values": values})


def names(sheet):
    """The label of the name on each sticker, in the order in which they were drawn."""
    return [shape for shape in sheet["shapes"] if shape.get("role") == "sticker-name"]


@settings(max_examples=60, deadline=None)
@given(
    st.sampled_from(list(SIZES)),
    st.integers(1, 4),
    st.integers(1, 12),
    st.integers(0, 15),
    st.integers(0, 4),
    st.integers(1, 4),
    st.integers(1, 14),
)
def test_each_label_lies_on_its_own_sticker(paper, columns, rows, margin, gap, first, rails):
    """The oracle lays stickers side by side in exact millimeters."""
    wide, high = (Fraction(str(size)) for size in SIZES[paper])
    width = (wide - 2 * margin - (columns - 1) * gap) / columns
    height = (high - 2 * margin - (rows - 1) * gap) / rows
    said = ask(
        cabinet(rails),
        paper,
        columns=str(columns),
        rows=str(rows),
        first=str(first),
        **dict.fromkeys(("top", "bottom", "left", "right"), f"{margin} mm"),
        across_gap=f"{gap} mm",
        up_gap=f"{gap} mm",
        outline="yes",
    )
    if first > columns * rows:
        assert errors(said)["first"]["kind"] == "range"
        return
    assert said["ok"], said
    place = first - 1
    for at, sheet in enumerate(said["sheets"]):
        outlines = [shape for shape in sheet["shapes"] if shape.get("role") == "outline"]
        for name, box in zip(names(sheet), zip(*[iter(outlines)] * 4, strict=True), strict=True):
            assert place // (columns * rows) == at
            row, column = divmod(place % (columns * rows), columns)
            left, top = margin + column * (width + gap), margin + row * (height + gap)
            xs = [point[0] for side in box for point in (side["from"], side["to"])]
            ys = [point[1] for side in box for point in (side["from"], side["to"])]
            assert (min(xs), max(xs)) == pytest.approx((float(left), float(left + width)), abs=1e-3)
            assert (min(ys), max(ys)) == pytest.approx((float(top), float(top + height)), abs=1e-3)
            assert left < name["at"][0] < left + width
            assert top < name["at"][1] < top + height
            place += 1
    assert place == first - 1 + rails


def test_a_label_says_what_the_piece_is():
    said = ask(cabinet())
    texts = [shape["text"] for shape in said["sheets"][0]["shapes"]]
    assert texts[:3] == ["Rail 1", "25 1/2″", "long point, 2 1/4″"]
    assert "1 of 1, Record cabinet" in texts
    assert any(text.startswith("left miter 45") for text in texts)


def test_the_ends_go_on_in_the_next_line_where_one_has_no_room_for_them():
    (sheet,) = ask(cabinet(), columns="5", rows="4")["sheets"]
    texts = [shape["text"] for shape in sheet["shapes"] if shape.get("role") == "sticker-note"]
    assert "left miter 45° right miter 45°" in (" ".join(texts))
    assert not any("…" in text for text in texts)


def test_a_length_that_would_not_stand_whole_on_its_sticker_is_refused():
    values = {"length": "120 15/16", "width": "", "count": "1"}
    document = change(
        cabinet(), act="keep_line", name="Long", reckoner="piece_by_hand", values=values
    )
    assert ask(document, columns="5")["ok"]
    error = errors(ask(document, columns="7"))["columns"]
    assert error["message"].startswith("120 15/16″ won’t fit on a label")


def test_every_piece_of_a_part_has_its_own_label():
    document = change(None, act="begin", name="Record cabinet")
    reckoners = sawside.handle({"do": "describe"})["reckoners"]
    values = next(each["example"] for each in reckoners if each["key"] == "mitered_frame")
    document = change(
        document, act="keep_line", name="Frame", reckoner="mitered_frame", values=values
    )
    pieces = sawside.handle({"do": "view", "document": document})["pieces"]
    said = ask(document)
    assert sum(len(names(sheet)) for sheet in said["sheets"]) == sum(p["count"] for p in pieces)


def test_a_long_name_is_cut_so_that_it_stays_on_its_sticker():
    document = change(cabinet(), act="rename", id="1", name="Rail " * 15 + "end")
    (sheet,) = ask(document, columns="4")["sheets"]
    (name,) = names(sheet)
    assert name["text"].endswith("…")
    assert len(name["text"]) < 25


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"columns": "0"}, "columns", "range"),
        ({"columns": "9"}, "columns", "impossible"),
        ({"rows": "29"}, "rows", "impossible"),
        ({"left": "6 in", "right": "6 in"}, "columns", "impossible"),
        ({"first": "25"}, "first", "range"),
        ({"top": "1//2"}, "top", "unreadable"),
        ({"outline": "dotted"}, "outline", "unknown"),
        ({"color": "red"}, "color", "unknown"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    error = errors(ask(cabinet(), **values))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


@pytest.mark.parametrize(
    ("unit", "paper", "size", "narrow"),
    [
        # By hand: (8 1/2 − 2 × 3/8) ÷ 3 = 2 7/12, nearest 2 9/16; (11 − 3/4) ÷ 8 = 1 9/32.
        ("in", "letter", "1 label, ≈ 2 9/16″ × 1 9/32″.", "come out ≈ 7/8″ wide"),
        # (210 − 2 × 10) ÷ 3 = 63 1/3; (297 − 20) ÷ 8 = 34 5/8; 190 ÷ 9 = 21.1.
        ("mm", "a4", "1 label, ≈ 63 mm × ≈ 35 mm.", "come out ≈ 21 mm wide"),
    ],
)
def test_the_size_of_a_label_is_told_in_the_unit_of_the_project(unit, paper, size, narrow):
    document = change(cabinet(), act="set", settings={"unit": unit, "display": unit})
    assert ask(document, paper)["said"].endswith(size)
    assert narrow in errors(ask(document, paper, columns="9"))["columns"]["message"]


def test_a_project_without_pieces_says_so():
    error = errors(ask(change(None, act="begin", name="Record cabinet")))["document"]
    assert error["kind"] == "missing"


def test_describe_declares_what_is_set_of_a_sheet_of_stickers():
    fields = sawside.handle({"do": "describe"})["labels"]
    assert {"columns", "rows", "top", "left"} <= {field["key"] for field in fields}
    assert all(field["default"] for field in fields)


GRID = {"columns": "2", "rows": "4", "top": "1/2", "left": "1/4"}


def test_a_project_keeps_its_grid_as_it_was_typed_with_the_unit_of_its_numbers():
    document = change(cabinet(), act="labels", values=GRID | {"right": ""})
    assert document["labels"] == {"unit": "in", "values": GRID}
    in_mm = change(document, act="set", settings={"unit": "mm"})
    message = {"do": "labels", "document": in_mm, "paper": "a4"}
    assert sawside.handle(message) == sawside.handle(message | {"values": GRID, "unit": "in"})
    in_other = message | {"values": GRID, "unit": "mm"}
    assert sawside.handle(message)["said"] != sawside.handle(in_other)["said"]
    assert sawside.handle(message)["said"] != ask(in_mm, **GRID)["said"]
    again = change(in_mm, act="labels", values=GRID | {"top": "3/4"})
    assert again["labels"] == {"unit": "in", "values": GRID | {"top": "3/4"}}
    assert "labels" not in change(again, act="labels", values=dict.fromkeys(GRID, ""))


def test_a_margin_that_was_left_blank_before_it_started_in_inches_is_what_it_was():
    document = change(cabinet(), act="labels", values=GRID)
    opened = sawside.handle({"do": "change", "document": document | {"schema": 5}, "act": RENAMED})
    assert opened["document"]["labels"]["values"] == GRID | {"bottom": "10 mm", "right": "10 mm"}


RENAMED = {"act": "rename_project", "name": "Record cabinet"}


def test_what_can_not_be_read_of_a_grid_is_kept_all_the_same():
    document = change(cabinet(), act="labels", values={"rows": "29", "top": "much"})
    assert document["labels"]["values"] == {"rows": "29", "top": "much"}
    error = errors(sawside.handle({"do": "labels", "document": document, "paper": "a4"}))["top"]
    assert error["kind"] == "unreadable"


@pytest.mark.parametrize(
    ("act", "field"),
    [
        ({"values": {"color": "red"}}, "values"),
        ({"values": {"top": 3.5, "rows": None}}, "rows"),
        ({"values": []}, "values"),
        ({}, "values"),
        ({"values": GRID, "unit": "ell"}, "unit"),
    ],
)
def test_a_grid_that_is_none_is_refused(act, field):
    said = sawside.handle({"do": "change", "document": cabinet(), "act": {"act": "labels"} | act})
    assert said["error"]["field"] == field


def test_the_labels_of_a_project_stay_in_a_merge():
    mine = change(cabinet(), act="labels", values=GRID)
    theirs = change(cabinet(2), act="labels", values={"columns": "5"})
    text = sawside.handle({"do": "backup", "document": theirs, "when": "2026-11-25"})["text"]
    merged = sawside.handle({"do": "merge", "document": mine, "text": text})
    assert merged["document"]["labels"]["values"] == GRID
    assert "This project’s other settings and its labels win" in merged["rule"]
