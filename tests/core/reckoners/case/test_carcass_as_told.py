"""A case that is cut exactly as it is told, marks and all, goes together."""

import re
from fractions import Fraction

import pytest
from asking import as_number, reckon

JOINT = Fraction(1, 4)
MARK = Fraction(1, 16)


def divider_places(part):
    """Where the left edges of the dadoes for dividers are, from the left end, as told."""
    lines = [line for line in part["about"] if "for the divider" in line or "for divider" in line]
    return [
        as_number(re.search(r"left edge (?:≈ )?([\d/ ]+″) from the left end", line)[1])
        for line in lines
    ]


def bays_of(part):
    """The numbers of the bays that a shelf is for, of 20."""
    named = part["name"].partition(", bay")[2].removeprefix("s").strip()
    return [int(each) - 1 for each in named.split(", ")] if named else list(range(20))


def faults(width, dividers, top, thickness):
    """What is wrong with a case that is cut as told: one fixed and one adjustable shelf per bay."""
    case = {"width": str(width), "height": "32", "depth": "15 1/2", "thickness": thickness}
    more = {"dividers": str(dividers), "fixed": "1", "adjustable": "1", "gap": "1/16"}
    said = reckon("carcass", **case, **more, top=top)
    thick = Fraction(said["parts"][0]["thickness"]["exact"])
    parts = {part["key"]: part for part in said["parts"]}
    told = {key: Fraction(part["length"]["mark"]) for key, part in parts.items()}
    places = [place - JOINT for place in divider_places(parts["bottom"])]
    above = [place - (thick if top == "over" else JOINT) for place in divider_places(parts["top"])]
    assert len(places) == len(above) == dividers
    # On marks of 1/64, half of one each: what is not on them can't be told any better.
    plumb = 0 if thick.denominator <= 64 else MARK / 4
    if any(abs(low - high) > plumb for low, high in zip(places, above, strict=True)):
        yield f"out of plumb: {places} {above}"
    ends = [*places, told["bottom"] - 2 * JOINT]
    starts = [0, *(place + thick for place in places)]
    bays = [end - start for start, end in zip(starts, ends, strict=True)]
    shelves = {"fixed": 0, "adjustable": 0}
    for key, part in parts.items():
        kind = key.partition("_")[0]
        if kind not in shelves:
            continue
        shelves[kind] += part["count"]
        goes_in = told[key] - 2 * JOINT if kind == "fixed" else told[key] + MARK * 2
        for number in bays_of(part)[: len(bays)]:
            room = bays[number] - goes_in
            if not 0 <= room <= MARK:
                yield f"{part['name']} has {room} in bay {number + 1}"
    if set(shelves.values()) != {dividers + 1}:
        yield f"{shelves} shelves"
    if "bays" in said["by_key"]:
        listed = [Fraction(each["exact"]) for each in said["by_key"]["bays"]["items"]]
    else:
        listed = [Fraction(said["by_key"]["bay"]["exact"])] * (dividers + 1)
    if any(abs(one - other) > plumb * 2 for one, other in zip(listed[:-1], bays, strict=False)):
        yield f"told {listed}, there are {bays}"


@pytest.mark.parametrize("top", ["between", "over"])
@pytest.mark.parametrize("dividers", [1, 2, 3, 4])
def test_what_is_told_goes_together(dividers, top):
    """Widths from 24 to 48 in plywood of 23/32 and boards of 3/4, inside and out. Arithmetic."""
    found = {}
    for step in range(0, 24 * 16 + 1, 5):
        width = 24 + Fraction(step, 16)
        thickness = "3/4" if step % 2 else "23/32"
        wrong = list(faults(width, dividers, top, thickness))
        if wrong:
            found[width, thickness] = wrong
    assert found == {}


@pytest.mark.parametrize("top", ["between", "over"])
def test_a_thickness_that_is_on_no_mark_goes_together_too(top):
    """Sheets of 18 mm in a shop that marks in inches."""
    found = {}
    for dividers in (1, 2, 3, 4):
        for width in range(24, 49):
            wrong = list(faults(width, dividers, top, "18 mm"))
            if wrong:
                found[dividers, width] = wrong
    assert found == {}


def test_three_equal_bays_by_hand():
    """36 wide of 23/32: 36 − 1 7/16 = 34 9/16; less 1 7/16 and in 3: 11 1/24. Left faces of the
    dividers 11 1/24 and 22 77/96 from the inside: marked 11 1/16 and 22 13/16. So bays of 11 1/16,
    22 13/16 − 11 1/16 − 23/32 = 11 1/32 and 34 9/16 − 22 13/16 − 23/32 = 11 1/32, and shelves of
    11 1/32 + 2 × 1/4 = 11 17/32. In the bottom 1/4 more: 11 5/16 and 23 1/16; in a top over the
    sides 23/32 more: 11 25/32 and 23 17/32."""
    case = {"width": "36", "height": "32", "depth": "15 1/2", "dividers": "2", "fixed": "1"}
    said = reckon("carcass", **case, top="over")
    parts = {part["key"]: part for part in said["parts"]}
    assert (parts["fixed"]["count"], parts["fixed"]["length"]["text"]) == (3, "11 17/32″")
    assert divider_places(parts["bottom"]) == [as_number("11 5/16"), as_number("23 1/16")]
    assert divider_places(parts["top"]) == [as_number("11 25/32"), as_number("23 17/32")]
    bays = [each["text"] for each in said["by_key"]["bays"]["items"]]
    assert bays == ["11 1/16″", "11 1/32″", "11 1/32″"]
    assert said["by_key"]["bay"]["text"] == "11 1/32″"
