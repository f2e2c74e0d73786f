"""Shelves whose openings get smaller from the bottom up, by a constant step or ratio.

Two of height, shelf count, lowest opening, highest opening and step (or ratio) are left blank
and solved for. With the count blank the highest opening is the least that one wants.
"""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.case import stacked
from sawside.geometry.graduation import Ratio, Step
from sawside.lengths.display import decimal_text
from sawside.reckoners.shelves.shared.case_fields import (
    inside_height,
    inside_working,
    marked_as,
    measured_field,
    shelves_text,
)
from sawside.reckoners.shelves.shared.layout.graduated_openings import most_shelves, openings_of
from sawside.reckoners.shelves.shared.shelves_told import laid_out, shelves_told

_WAYS = {"step": Step, "ratio": Ratio}
_NAMES = {
    "height": "Height",
    "shelf_count": "Shelves",
    "lowest": "Bottom opening",
    "highest": "Top opening",
    "step": "Step",
    "percent": "Percent",
}


def graduated_openings(given, show):
    """The marks, every opening as the marks give it, and whatever of the rest was blank."""
    grade_key = "step" if given.by == "step" else "percent"
    if given.shelf_count == 0:
        raise Refusal(
            "range", "Shelves must be at least 1.", "Check the number.", field="shelf_count"
        )
    blank = _two_blank(given, grade_key)
    inside = inside_height(given, show)
    grade = given.step if given.by == "step" else given.percent and Fraction(given.percent, 100)
    shelves, way, lines = given.shelf_count, _WAYS[given.by], inside_working(given, show, inside)
    highest = given.highest
    if shelves is None:
        shelves = most_shelves(given, show, way, inside, grade, blank)
        lines += (f"At least {show.text(highest)} at the top → {shelves_text(shelves)}",)
        highest = None
    openings = openings_of(given, show, way, inside, shelves, given.lowest, highest, grade)
    if inside is None:
        inside = sum(openings) + shelves * given.thickness
    thicknesses = (given.thickness,) * shelves
    # The last one from the top, so that it is rational where the highest opening was given.
    bottoms = (*stacked(openings, thicknesses)[:-1], inside - openings[-1] - given.thickness)
    shelving = laid_out(given, inside, bottoms, thicknesses)
    lines += tuple(_working(given, show, inside, shelves, openings))
    return shelves_told(
        show,
        shelving,
        main="marks",
        verdict=f"{shelves + 1} openings, {show.brief(openings[0])} down to "
        f"{show.brief(openings[-1])}",
        answers={
            "lowest": openings[0],
            "highest": openings[-1],
            "shelf_count": shelves,
            "height": inside,
            **_graded(given, openings),
        },
        working=(*lines, marked_as(given)),
        openings=openings,
        answer="height" if given.height is None else "opening",
        field=measured_field(given),
    )


def _two_blank(given, grade_key):
    """The keys of the two fields left blank; "conflict" where they are not two, or not solvable."""
    keys = ("height", "shelf_count", "lowest", "highest", grade_key)
    blank = [key for key in keys if getattr(given, key) is None]
    named = ", ".join(_NAMES[key] for key in keys)
    if len(blank) < 2:
        raise Refusal(
            "conflict",
            f"Too many are filled in: Sawside figures two of {named} from the others.",
            f"Leave {'one more' if blank else 'two'} of them blank.",
            field="highest" if given.highest is not None else "lowest",
        )
    if len(blank) > 2:
        first = next(key for key in ("height", "shelf_count", "highest") if key in blank)
        raise Refusal(
            "conflict",
            f"You can leave only two of {named} blank.",
            f"Fill in {_NAMES[first]}.",
            field=first,
        )
    if "shelf_count" in blank and not {"height", "lowest"} & set(blank):
        other = next(key for key in blank if key != "shelf_count")
        raise Refusal(
            "conflict",
            f"With Shelves blank, Sawside needs {_NAMES[other]} to count them.",
            f"Fill in {_NAMES[other]}, or Shelves.",
            field=other,
        )
    return blank


def _working(given, show, inside, shelves, openings):
    """How the openings follow from each other, and that they fill the height."""
    t = show.number(given.thickness)
    shown = [show.number(opening) for opening in openings]
    if given.height is not None:
        clear = inside - shelves * given.thickness
        yield f"Openings share {show.number(inside)} − {shelves} × {t}{show.equals(clear)}"
    together = show.number(sum(openings))
    if given.by == "step":
        step = show.number(openings[0] - openings[1])
        steps = shelves * (shelves + 1) // 2
        yield f"Bottom {shown[0]}, each next one {step} less: top {shown[-1]}"
        yield f"Total {shelves + 1} × {shown[0]} − {steps} × {step} = {together}"
    else:
        ratio = show.pure(openings[1] / openings[0])
        powers = " + ".join(["1", "r", "r²", "r³"][: min(shelves + 1, 4)])
        more = " + …" if shelves > 3 else ""
        yield f"Bottom {shown[0]}, each next one × {ratio}: top {shown[-1]}"
        yield f"Total {shown[0]} × ({powers}{more}) = {together}, r = {ratio}"
    if given.height is None:
        yield f"{together} + {shelves} × {t}{show.equals(inside)} inside"


def _graded(given, openings):
    """The answer about what each opening is beside the one below it."""
    if given.by == "step":
        return {"step": openings[0] - openings[1]}
    percent = decimal_text(openings[1] / openings[0] * 100, 2)
    about = "about " if percent.endswith("…") else ""
    return {"ratio": f"{about}{percent.removesuffix('…')}% of the one below"}
