"""The case to start from: all of it answered, and one reading of the space reaches the last piece.

Its numbers are our own. That sums agree is worked from the answers themselves, in rationals.
"""

from fractions import Fraction
from operator import sub

from projects import answered, changed, entry, view

import sawside
from sawside.project.schema.document import SCHEMA

SAMPLE = sawside.handle({"do": "describe"})["case"]


def test_it_is_a_project_of_today_that_is_answered_to_the_last_line():
    assert SAMPLE["schema"] == SCHEMA
    shown = view(SAMPLE)
    assert [each["name"] for each in shown["entries"] if not each["ok"]] == []
    kinds = [each["kind"] for each in SAMPLE["entries"]]
    assert kinds == sorted(kinds, key=("reading", "line").index)
    assert len(set(kinds)) == 2


def test_every_line_below_the_space_takes_something_of_a_line_above_it():
    lines = [each for each in SAMPLE["entries"] if each["kind"] == "line"]
    for number, line in enumerate(lines):
        above = [each["name"] for each in SAMPLE["entries"][: len(SAMPLE["entries"]) - len(lines)]]
        above += [each["name"] for each in lines[:number]]
        assert any(f"[{name}" in str(line["values"]) for name in above), line["name"]


def sizes(document):
    """{name of a piece: (length, width) in exact inches}."""
    return {
        each["name"]: tuple(Fraction(each[side]["exact"]) for side in ("length", "width"))
        for each in view(document)["pieces"]
    }


def test_a_corrected_reading_of_the_space_reaches_the_last_piece():
    """The narrowest reading an eighth less, worked by hand: what runs across the case loses an
    eighth, what lies in one of its two bays half of that, and what stands loses nothing."""
    reading = entry(SAMPLE, "Alcove width, top")
    narrow = changed(SAMPLE, "correct", id=reading["id"], text="37 3/8", unit="in")
    before, after = sizes(SAMPLE), sizes(narrow)
    lost = {name: tuple(map(sub, before[name], after[name])) for name in before}
    whole, half = Fraction(1, 8), Fraction(1, 16)
    assert lost == dict.fromkeys(before, (0, 0)) | {
        "Carcass: Bottom": (whole, 0),
        "Carcass: Top": (whole, 0),
        "Carcass: Toe kick": (whole, 0),
        "Carcass: Back": (0, whole),
        "Carcass: Fixed shelf": (half, 0),
        "Carcass: Adjustable shelf": (half, 0),
        "Face frame: Top rail": (whole, 0),
        "Face frame: Bottom rail": (whole, 0),
        "Doors: Rail": (half, 0),
        "Doors: Panel": (0, half),
        "Crown": (whole, 0),
    }


def test_the_crown_covers_the_face_frame_from_wall_to_wall_and_its_line_follows_the_height():
    """By hand: from the top of the case it drops 1 1/2."""
    size = sizes(SAMPLE)
    frame = size["Face frame: Top rail"][0] + 2 * size["Face frame: Stile"][1]
    assert size["Crown"][0] == frame
    line = "[Carcass: Outside height] - [Crown: Bottom edge, above the floor]"
    kept = changed(SAMPLE, "keep_reading", name="Line", text=line, unit="in")
    assert Fraction(entry(kept, "Line")["headline"]["exact"]) == Fraction(3, 2)


def test_crown_that_is_cut_is_judged_when_a_reading_of_the_space_is_corrected():
    """An eighth less in the narrowest width: a crown that is cut can be cut down by an eighth; an
    eighth more in every width, and it is too short by that."""
    crown = entry(SAMPLE, "Crown")["id"]
    cut = changed(SAMPLE, "cut", id=crown, part="front", by=1)
    wide = cut
    reading = entry(SAMPLE, "Alcove width, top")["id"]
    narrow = changed(cut, "correct", id=reading, text="37 3/8", unit="in")
    for where, text in (("bottom", "37 3/4"), ("middle", "37 11/16"), ("top", "37 5/8")):
        reading = entry(SAMPLE, f"Alcove width, {where}")["id"]
        wide = changed(wide, "correct", id=reading, text=text, unit="in")
    for document, said in ((narrow, "can be cut down by 1/8″"), (wide, "too short by 1/8″")):
        (piece,) = [each for each in view(document)["pieces"] if each["name"] == "Crown"]
        assert [each["said"] for each in piece["verdicts"]] == [f"Crown: 1 piece {said}."]


def test_its_parts_add_up_to_the_case_across_every_section():
    """In rationals: what goes into a joint is 1/4 deep, a shelf stays 1/16 free at each end, a
    back that goes 3/8 into two rabbets has 1/16 of room."""
    size, ply, joint = sizes(SAMPLE), Fraction(23, 32), Fraction(1, 4)
    case = ("Carcass: ", "Face frame: ", "Crown")
    across = {
        name.split(": ")[-1]: length for name, (length, _) in size.items() if name.startswith(case)
    }
    wide = across["Bottom"] - 2 * joint + 2 * ply
    back, room = Fraction(3, 4) - Fraction(1, 16), Fraction(1, 16)
    assert wide == across["Toe kick"] + 2 * ply == size["Carcass: Back"][1] - back + 2 * ply
    bay = across["Fixed shelf"] - 2 * joint
    assert 2 * bay + 3 * ply == wide
    assert across["Adjustable shelf"] + 2 * Fraction(1, 16) == bay
    stiles, rail = 2 * Fraction(3, 2), across["Top rail"]
    assert stiles + rail == across["Crown"] == wide + 2 * Fraction(1, 4)
    high = across["Side"]
    assert across["Divider"] - 2 * joint + 2 * ply + Fraction(7, 2) == high
    assert across["Back"] + room + Fraction(7, 2) == across["Stile"] + Fraction(7, 2) == high


def test_the_weight_that_keeps_it_from_tipping_is_that_of_its_carcass():
    """Thicker plywood makes a heavier carcass, and a heavier climber is needed to tip it."""
    plywood = entry(SAMPLE, "Plywood")
    thick = changed(SAMPLE, "correct", id=plywood["id"], text="1", unit="in")
    climbers = [
        int(each["text"].split(" lb")[0])
        for document in (SAMPLE, thick)
        for each in answered("entry", document, id="17")["reckoning"]["answers"]
        if each["key"] == "climber"
    ]
    assert climbers[0] < climbers[1]
