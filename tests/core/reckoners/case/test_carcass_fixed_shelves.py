"""Where the fixed shelves of a case are: evenly, or at heights of one's own."""

from asking import reckon

import sawside
from tests.core.reckoners.case.carcasses import CABINET, about

KICKED = CABINET | {"kick": "notched", "dividers": "1"}
"""Inside 25 high: 30 − 3 1/2 − 2 × 3/4. The bottom's upper face 4 1/4 from the end of a side."""


def dadoes(said, key):
    return next(line for line in about(said, key) if "fixed shel" in line)


def openings(said):
    return [(each["label"], each["text"]) for each in said["by_key"]["openings"]["items"]]


def test_fixed_shelves_are_spaced_evenly_and_dadoed_at_one_height_everywhere():
    """(25 − 3/4) ÷ 2 = 12 1/8: 16 3/8 from the end of a side, 12 1/8 + 1/4 of joint from that of a
    divider."""
    said = reckon("carcass", **KICKED, fixed="1")
    assert dadoes(said, "side") == (
        "Dado 3/4″ wide, 1/4″ deep in the inside face, bottom edge 16 3/8″ from the bottom end, "
        "for a fixed shelf."
    )
    assert "in both faces, bottom edge 12 3/8″ from the bottom end" in dadoes(said, "divider")
    assert openings(said) == [("Every opening", "12 1/8″")]
    assert "openings" not in reckon("carcass", **KICKED)["by_key"]


def test_fixed_shelves_go_where_they_are_asked_for():
    """13 1/4 and 13 1/4 + 3/4 + 6 = 20 from the bottom: 25 − 20 − 3/4 = 4 1/4 is left above."""
    said = reckon("carcass", **KICKED, fixed="2", shelf_heights=["13 1/4", "20"])
    assert dadoes(said, "side") == (
        "Dadoes 3/4″ wide, 1/4″ deep in the inside face, bottom edges 17 1/2″ and 24 1/4″ from the "
        "bottom end, for the fixed shelves."
    )
    assert "bottom edges 13 1/2″ and 20 1/4″ from the bottom end" in dadoes(said, "divider")
    assert openings(said) == [
        ("Opening 1, at the bottom", "13 1/4″"),
        ("Opening 2", "6″"),
        ("Opening 3", "4 1/4″"),
    ]
    working = [line["text"] for line in said["working"]]
    assert "Fixed shelf 2, from the bottom end of a side: 20 + 3 1/2 + 3/4 = 24 1/4" in working
    assert "Opening 3: 25 − 20 − 3/4 = 4 1/4" in working


def test_a_shelf_that_is_set_back_has_stopped_dadoes_at_its_heights():
    said = reckon("carcass", **KICKED, fixed="2", setback="1")
    assert "from the bottom end, stopped 1″ from the front edge, for" in dadoes(said, "side")


def test_equal_shelves_on_a_separate_base_are_measured_from_the_sides_own_end():
    """The sides stand on the base: 3/4 + 12 1/8."""
    said = reckon("carcass", **CABINET, kick="base", fixed="1")
    assert "bottom edge 12 7/8″ from the bottom end" in dadoes(said, "side")


def test_heights_can_be_the_marks_of_shelf_spacing():
    """A shelf above two openings of 8: marks of 8 and 16 3/4 in 25 1/2 go into the sides."""
    document = None
    for act in (
        {"act": "begin", "name": "Record cabinet"},
        {
            "act": "keep_line",
            "name": "Shelf spacing",
            "reckoner": "shelf_layout",
            "values": {"layout": "equal", "height": "25 1/2", "shelf_count": "2"}
            | {"thickness": "3/4", "case_parts": "inside"},
        },
        {
            "act": "keep_line",
            "name": "Carcass",
            "reckoner": "carcass",
            "values": CABINET
            | {"height": "27", "fixed": "2"}
            | {
                "shelf_heights": [
                    "[Shelf spacing: Shelf marks 1]",
                    "[Shelf spacing: Shelf marks 2]",
                ]
            },
        },
    ):
        message = {"do": "change", "document": document, "act": act}
        document = sawside.handle(message)["document"]
    carcass = sawside.handle({"do": "entry", "document": document, "id": "2"})["reckoning"]
    side = next(part for part in carcass["parts"] if part["key"] == "side")
    assert "bottom edges 8 3/4″ and 17 1/2″ from the bottom end" in " ".join(side["about"])


def test_the_drawing_has_the_fixed_shelves_where_they_are():
    """Seen from the front the shelf of a bay is from 17 1/2 to 18 1/4 above the floor."""
    said = reckon("carcass", **KICKED, fixed="1", shelf_heights=["13 1/4"])
    boxes = [
        [point[1] for point in shape["points"]]
        for shape in said["drawing"]["shapes"]
        if shape.get("role") == "stock"
    ]
    assert any((min(ys), max(ys)) == (-18.25, -17.5) for ys in boxes)
