"""How wide and how high the openings of a face frame are. Inches, exact."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.words import counted

LEAST = Fraction(1, 2)
"""The least opening that is taken for one, in inches. Common practice, no source."""


def openings_across(given, show, outline, stile):
    """The widths of the openings from the left; `stile` is the width of a middle one."""
    number = stiles_between(given)
    wood = outline.left + outline.right + number * stile
    field = "widths" if given.bays == "given" else "middle_stiles" if number else "width"
    if outline.width - wood < LEAST * (number + 1):
        raise _no_room(show, "stiles", wood, f"{show.text(outline.width)} wide", field)
    return _shared(show, outline.width - wood, number, given.widths, "across", "widths")


def openings_down(given, show, outline, rail):
    """The heights of the openings from the top; `rail` is the width of a middle one."""
    number, high = rails_between(given), outline.height - outline.foot
    wood = outline.top + outline.bottom + number * rail
    field = "heights" if given.rows == "given" else "middle_rails" if number else "height"
    if high - wood < LEAST * (number + 1):
        raise _no_room(show, "rails", wood, f"{show.text(high)} high", field)
    return _shared(show, high - wood, number, given.heights, "down", "heights")


def stiles_between(given):
    """How many middle stiles there are."""
    return len(given.widths) if given.bays == "given" else given.middle_stiles


def rails_between(given):
    """How many middle rails each column has."""
    return len(given.heights) if given.rows == "given" else given.middle_rails


def _shared(show, room, number, listed, way, field):
    """`room` in equal openings, or in those that are listed and what they leave for the last."""
    if listed is None:
        return _equal(show, room, number + 1)
    rest = room - sum(listed)
    if rest < LEAST:
        raise Refusal(
            "impossible",
            f"{counted(number, 'opening')} {way} {'takes' if number == 1 else 'take'} "
            f"{show.text(sum(listed))} of the {show.text(room)} between the wood: the last one "
            f"would be under {show.text(LEAST)}.",
            "Enter smaller openings, or fewer.",
            field=field,
        )
    return [*listed, rest]


def _equal(show, room, count):
    """`room` in as many equal openings. Where equal ones would have to be rounded, each is on one
    of the person's marks and none is more than a mark wider than another, so that what is cut
    fills the frame; what is on no mark stays with one of them."""
    equal = room / count
    if count == 1 or show.rounded(equal).direction == "exact":
        return [equal] * count
    step = show.settings.grid.step
    marks, rest = divmod(room, step)
    each, wider = divmod(marks, count)
    narrow = each * step
    return [narrow] * (count - wider - 1) + [narrow + rest] + [narrow + step] * wider


def _no_room(show, noun, wood, size, field):
    return Refusal(
        "impossible",
        f"The {noun} take up {show.text(wood)} of a frame {size}: an opening would be under "
        f"{show.text(LEAST)}.",
        f"Use fewer or narrower {noun}, or a bigger frame.",
        field=field,
    )
