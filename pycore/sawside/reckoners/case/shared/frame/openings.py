"""How wide and how high the openings of a face frame are. Inches, exact."""

from fractions import Fraction
from itertools import pairwise

from sawside.errors import Refusal
from sawside.lengths.marks import to_mark
from sawside.lengths.words import counted
from sawside.reckoners.case.shared.frame.columns import by_column
from sawside.reckoners.case.shared.frame.equal_openings import LEAST, equal_openings, no_room
from sawside.reckoners.case.shared.frame.outline import pasts_of


def openings_across(given, show, outline, stile):
    """The widths of the openings from the left; `stile` is the width of a middle one."""
    number = stiles_between(given)
    wood = outline.left + outline.right + number * stile
    field = "widths" if given.bays == "given" else "middle_stiles" if number else "width"
    if outline.width - wood < LEAST * (number + 1):
        raise no_room(show, "stiles", wood, f"{show.text(outline.width)} wide", field)
    if given.bays == "centered":
        return _centered(given, show, outline, stile, outline.width - wood)
    return _shared(show, outline.width - wood, number, given.widths, "across", "widths")


def equal_bay(given):
    """The clear width of each bay of the case, with a divider for each middle stile."""
    number = given.middle_stiles
    return (given.width - (number + 2) * given.side) / (number + 1)


def first_center(given):
    """From the left outside of the case to the center of its first divider."""
    return given.side + equal_bay(given) + given.side / 2


def _centered(given, show, outline, stile, room):
    """The openings between middle stiles that are centered on the dividers of equal bays."""
    if given.size_of == "frame":
        raise Refusal(
            "impossible",
            "A frame by itself has no case with bays to be centered on.",
            "Pick equal openings, or the case it covers under Size of.",
            field="bays",
        )
    if equal_bay(given) <= 0:
        raise Refusal(
            "impossible",
            f"The sides and dividers, {show.text(given.side)} each, leave no bays in a case "
            f"{show.text(given.width)} wide.",
            "Use thinner sides or fewer middle stiles.",
            field="side",
        )
    number, across = given.middle_stiles, equal_bay(given) + given.side - stile
    to_first = pasts_of(given)[0] + first_center(given) - stile / 2 - outline.left
    ends = [to_first + place * across for place in range(number)] + [room]
    found = _between(ends)
    if any(show.rounded(each).direction != "exact" for each in found):
        grid = show.settings.grid
        found = _between([*(to_mark(each, grid).mark for each in ends[:-1]), room])
    if min(found) < LEAST:
        raise Refusal(
            "impossible",
            f"Centered on equal bays, an opening would be under {show.text(LEAST)}.",
            "Use narrower stiles, or fewer.",
            field="bays",
        )
    return found


def _between(ends):
    """The openings that end there, all wood between them left out."""
    return [end - start for start, end in pairwise([Fraction(0), *ends])]


def openings_down(given, show, outline, rail, columns):
    """The heights of the openings from the top, a list for each of so many columns; `rail` is the
    width of a middle one."""
    if given.rows == "columns":
        return by_column(given, show, outline, rail, columns)
    number, high = rails_between(given), outline.height - outline.foot
    wood = outline.top + outline.bottom + number * rail
    field = "heights" if given.rows == "given" else "middle_rails" if number else "height"
    if high - wood < LEAST * (number + 1):
        raise no_room(show, "rails", wood, f"{show.text(high)} high", field)
    return [_shared(show, high - wood, number, given.heights, "down", "heights")] * columns


def stiles_between(given):
    """How many middle stiles there are."""
    return len(given.widths) if given.bays == "given" else given.middle_stiles


def rails_between(given):
    """How many middle rails each column has, where all are alike."""
    return len(given.heights) if given.rows == "given" else given.middle_rails


def _shared(show, room, number, listed, way, field):
    """`room` in equal openings, or in those that are listed and what they leave for the last."""
    if listed is None:
        return equal_openings(show, room, number + 1)
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
