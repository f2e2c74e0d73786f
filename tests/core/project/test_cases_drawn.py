"""The cases of a project, drawn: which lines make one, and that its drawings tell their answers.

Places of parts are checked in `reckoners/case/test_parts_in_their_places.py`; here, that what is
drawn of them is in scale and that each length is one of an answer.
"""

from itertools import combinations
from math import dist

import pytest
from drawn_cases import FRAME, carcass, cases, drawn, frame, line, outlines, spacing, texts
from projects import acts, answered, begun, changed, entry, view

import sawside

SAMPLE = sawside.handle({"do": "describe"})["case"]
EVENLY = "Adjustable shelves are drawn evenly spaced."


def answers(document, name):
    """{label: text} of a line's answers, those of a list each by its own label."""
    said = answered("entry", document, id=entry(document, name)["id"])["reckoning"]["answers"]
    items = {each["label"]: each["text"] for each in said}
    return items | {
        f"{each['label']} {at}": item["text"]
        for each in said
        for at, item in enumerate(each.get("items", ()), 1)
    }


def test_the_sample_project_has_its_case_from_four_sides():
    [case] = view(SAMPLE)["cases"]
    assert case["name"] == "Carcass"
    assert [each["title"] for each in case["views"]] == ["Front", "Side", "Section", "Plan"]
    assert case["note"] == EVENLY


def test_what_is_told_in_the_drawings_are_the_answers_of_the_lines():
    [case] = view(SAMPLE)["cases"]
    case_, frame_ = (answers(SAMPLE, name) for name in ("Carcass", "Face frame"))
    wide, high, deep = (case_[f"Outside {each}"] for each in ("width", "height", "depth"))
    bays, openings = [case_["Bay width"]] * 2, [case_["Openings between fixed shelves"]] * 2
    inside = case_["Inside depth"]
    told = {key: sorted(texts(each, "dimension")) for key, each in drawn(case).items()}
    assert told == {
        "front": sorted([wide, high, frame_["Frame width"], *openings]),
        "side": sorted([deep, high, frame_["Frame height"]]),
        "section": sorted([deep, inside, high, *openings]),
        "plan": sorted([wide, deep, inside, *bays]),
    }


def test_the_shelf_spacing_of_the_sample_is_that_of_its_carcass():
    """Worked out for the whole case, it comes to the case's own height."""
    assert (
        answers(SAMPLE, "Shelf spacing")["Overall case height"]
        == (answers(SAMPLE, "Carcass")["Outside height"])
    )


def test_every_part_has_a_letter_and_its_piece():
    shown = view(SAMPLE)
    [case] = shown["cases"]
    letters = [each["letter"] for each in case["parts"]]
    assert letters == list("ABCDEFGHIJKLMNOP")
    pieces = {(each["entry"], each["part"]) for each in shown["pieces"]}
    assert {(each["entry"], each["part"]) for each in case["parts"]} == pieces
    keys = {each["key"] for each in case["parts"]}
    drawings = drawn(case)
    seen = {key: parts_of(each) for key, each in drawings.items()}
    assert set.union(*seen.values()) == keys
    lettered = [set(texts(each, "label")) for each in drawings.values()]
    assert set.union(*lettered) == set(letters)


def test_no_letter_of_the_sample_is_on_another():
    """A letter takes some 10 of the 200 pixels that a view is wide or high at the most."""
    [case] = view(SAMPLE)["cases"]
    for drawing in drawn(case).values():
        spots = [each["at"] for each in drawing["shapes"] if each["kind"] == "label"]
        places = [point for each in drawing["shapes"] for point in each.get("points", ())]
        large = max(max(axis) - min(axis) for axis in zip(*places, strict=True))
        assert min(dist(one, two) for one, two in combinations(spots, 2)) > large / 40


def parts_of(drawing):
    return {shape["part"] for shape in drawing["shapes"] if "part" in shape}


@pytest.fixture(scope="module")
def views():
    """Of a case 36 × 30 × 12 in boards of 3/4, nailed; 3 of toe kick, 2 back, one divider."""
    [case] = cases(
        carcass(
            joint="butt",
            back="on",
            back_thickness="1/4",
            kick="notched",
            kick_height="3",
            recess="2",
            dividers="1",
            fixed="1",
        )
    )
    return drawn(case)


def test_the_front_is_in_scale(views):
    """Places by hand, down from the floor: 36 − 2 × 3/4 = 34 1/2 between the sides."""
    front = views["front"]
    assert list(outlines(front, "side")) == [(0, -30, 0.75, 0), (35.25, -30, 36, 0)]
    assert list(outlines(front, "top")) == [(0.75, -30, 35.25, -29.25)]
    assert list(outlines(front, "kick")) == [(0.75, -3, 35.25, 0)]
    assert list(outlines(front, "back", "ghost")) == [(0, -30, 36, -3)]


def test_the_side_shows_the_notch_of_the_toe_kick_and_the_edge_of_the_back(views):
    """The back is 1/4 on the rear of a case that is 12 deep with it."""
    side = views["side"]
    *_, last = (each for each in side["shapes"] if each.get("part", "").endswith("/side"))
    corners = [[0, -30], [11.75, -30], [11.75, 0], [2, 0], [2, -3], [0, -3]]
    assert last["points"] == corners
    assert list(outlines(side, "back")) == [(11.75, -30, 12, -3)]


def test_the_section_cuts_what_goes_across_its_bay_and_leaves_the_side_behind_it(views):
    section = views["section"]
    cut = {
        shape["part"].partition("/")[2]
        for shape in section["shapes"]
        if shape.get("role") == "stock"
    }
    assert cut == {"top", "bottom", "fixed", "back", "kick"}
    assert [*outlines(section, "side", "ghost")] == [(0, -30, 11.75, 0)]
    assert [*outlines(section, "divider")] == []


def test_the_plan_cuts_what_stands_and_has_the_front_below(views):
    plan = views["plan"]
    cut = {
        shape["part"].partition("/")[2] for shape in plan["shapes"] if shape.get("role") == "stock"
    }
    assert cut == {"side", "divider", "back"}
    assert [*outlines(plan, "side")] == [(0, -11.75, 0.75, 0), (35.25, -11.75, 36, 0)]
    assert [*outlines(plan, "back")] == [(0, -12, 36, -11.75)]
    assert [*outlines(plan, "top")] == []


def test_the_four_views_come_out_about_as_large(views):
    """The page draws each as wide as its box."""
    assert len({box[2] - box[0] for box in (each["box"] for each in views.values())}) == 1


def test_a_frame_stands_before_the_case_whose_numbers_it_takes():
    first, second = cases(
        carcass("Left case"), carcass("Right case", width="24"), frame("Right case")
    )
    assert {each["entry"] for each in first["parts"]} == {first["entry"]}
    assert len({each["entry"] for each in second["parts"]}) == 2
    assert "24 1/2″" in texts(drawn(second)["front"], "dimension")


def test_loose_shelves_without_a_spacing_are_said_to_be_drawn_evenly():
    [case] = cases(carcass(fixed="1", adjustable="1"))
    assert case["note"] == EVENLY
    [case] = cases(carcass(fixed="1"))
    assert case["note"] == ""


def test_loose_shelves_stand_as_the_spacing_of_their_case_says():
    """A graduated one: the lower opening is 2 taller. One of more shelves is passed over."""
    graduated = {"layout": "graduated", "shelf_count": "1", "by": "step", "step": "2"}
    [case] = cases(
        carcass(adjustable="1", fixed="0"),
        spacing("Carcass", "By three", shelf_count="3"),
        spacing("Carcass", "By two", **graduated),
    )
    assert case["note"] == ""
    section = drawn(case)["section"]
    [(_, top, _, bottom)] = outlines(section, "adjustable")
    [(_, floor, _, _)], [(*_, ceiling)] = (outlines(section, each) for each in ("bottom", "top"))
    assert (floor - bottom) - (top - ceiling) == pytest.approx(2)


def test_a_spacing_that_is_of_another_case_is_named():
    [case] = cases(carcass(fixed="1"), spacing("Carcass", shelf_count="3"))
    assert case["note"] == (
        "“Shelf spacing” lays out 3 shelves in each bay, “Carcass” has 1. Only those of “Carcass” "
        "are drawn and cut: enter fixed or adjustable shelves there."
    )


def test_a_case_without_the_shelves_that_are_laid_out_says_that_none_is_cut():
    [case] = cases(carcass(fixed="0"), spacing("Carcass", shelf_count="1"))
    assert "lays out 1 shelf in each bay, “Carcass” has none. Only" in case["note"]


def test_a_spacing_of_as_many_shelves_at_other_heights_is_named():
    graduated = {"layout": "graduated", "shelf_count": "1", "by": "step", "step": "2"}
    [case] = cases(carcass(fixed="1"), spacing("Carcass", **graduated))
    assert case["note"].startswith("“Shelf spacing” has another inside height or other shelf")


def test_a_spacing_may_give_the_case_its_height():
    """A case made around its shelves: what is solved in the one is taken by the other."""
    [case] = cases(
        line("Openings", "shelf_layout", shelf_count="1", opening="14", thickness="3/4"),
        carcass(fixed="1", height="[Openings: Inside height]", known="inside"),
    )
    assert case["note"] == ""
    assert texts(drawn(case)["section"], "dimension").count("14″") == 2


def test_a_project_without_a_carcass_has_no_case():
    assert cases(("keep_reading", {"name": "Alcove width", "text": "37 1/2"})) == []
    alone = line("Face frame", "face_frame", **FRAME, width="36", height="30")
    assert cases(alone) == []


def test_a_case_that_has_no_answer_now_is_not_drawn():
    kept = ("keep_reading", {"name": "Alcove width", "text": "36"})
    document = acts(begun(), kept, carcass(width="[Alcove width]"))
    assert view(document)["cases"]
    reading = entry(document, "Alcove width")["id"]
    narrow = changed(document, "correct", id=reading, text="1", unit="in")
    assert view(narrow)["cases"] == []


def test_a_view_without_drawings_tells_no_case():
    assert answered("view", SAMPLE, drawings=False)["cases"] == []


def test_many_bays_have_one_length():
    [case] = cases(carcass(dividers="6"))
    plan = drawn(case)["plan"]
    assert [each for each in texts(plan, "dimension") if each.startswith("first ")] == [
        f"first {answers(acts(begun(), carcass(dividers='6')), 'Carcass')['Bay widths 1']}"
    ]


def test_a_metric_case_is_told_in_millimeters():
    document = acts(
        begun(),
        ("set", {"settings": {"unit": "mm", "display": "mm"}}),
        line("Carcass", "carcass", width="900", height="720", depth="300", thickness="18"),
    )
    [case] = view(document)["cases"]
    assert {"900 mm", "720 mm"} <= set(texts(drawn(case)["front"], "dimension"))


def test_edging_that_stands_proud_is_in_front_of_the_depth():
    """Strips of 1/2 before the 12 of the case; the drawing goes around them."""
    [case] = cases(carcass(banding="case", band="1/2", solid_edging="proud"))
    section = drawn(case)["section"]
    assert [*outlines(section, "strip_top", "hatch")] == [(-0.5, -30, 0, -29.25)]
    assert section["box"][0] < -0.5
    assert texts(section, "dimension").count("12″") == 1
