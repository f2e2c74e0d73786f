"""The wood that a project is planned on: what its lines offer, and where none of that is for sale
what is usually sold."""

from fractions import Fraction

from sawside.boards.offer import Offer
from sawside.project.plans.suiting import is_sheet_goods
from sawside.project.schema.finding import of_kind
from sawside.wood.sold_sizes import PLYWOOD, SHEETS, SOFTWOOD_THICK, inches

_LISTS = ("wood_on_hand", "wood_to_buy")
_FOOT = 12
_USUAL_SHEET = {
    False: (Fraction(96), Fraction(48)),
    True: (Fraction(24400, 254), Fraction(12200, 254)),
}
"""Inches; in millimeters 2440 by 1220."""

WIDEST_BOARD = Fraction(45, 4)
"""Inches. What is wider comes out of a sheet: a 1 x 12 is the widest board that lumberyards sell,
11 1/4 in dry (PS 20)."""

WIDEST_STRIP = 2
"""Inches. Strips as narrow as this are edging and trim of solid wood, however thick: common
practice, no source."""

_ROOM = Fraction(3, 4)
"""Inches for each cut between matched pieces: the widest kerf of the settings."""

_LENGTHS = tuple(Fraction(feet * _FOOT) for feet in (8, 10, 12, 14, 16))
"""Lengths that boards are sold in: common practice, no source."""

_METRIC_THICK = frozenset(Fraction(10 * mm, 254) for mm in (3, 4, 6, 9, 12, 15, 18, 21, 24))
"""Of sheets in millimeters: common practice, no source."""

_LUMBER_THICK = frozenset(size.figures["dry"] for size in SOFTWOOD_THICK.values())
_SHEET_THICK = (
    _METRIC_THICK
    | (
        frozenset(inches(size.name.split(" (")[0]) for size in PLYWOOD.values())
        | frozenset(size.figures["usual"] for size in SHEETS.values())
    )
    - _LUMBER_THICK
)
"""What is 3/4 thick may be a board, so its thickness says nothing."""


def offers_of(document, evaluation):
    """[(its source "entry:row", `Offer`)] of every line that offers wood."""
    return [
        (f"{entry['id']}:{offer.key}", offer)
        for entry in of_kind(document, "line")
        for worked in (evaluation.worked[entry["id"]],)
        if worked.ok
        for offer in worked.found.stock
        if offer.count is None or offer.count > 0
    ]


def failed_lists(document, evaluation):
    """The names of the lists of wood that have no answer."""
    return [
        entry["name"]
        for entry in of_kind(document, "line")
        if entry["reckoner"] in _LISTS and not evaluation.worked[entry["id"]].ok
    ]


def _usual_width(want):
    """A board of a piece's own width; what is matched side by side is ripped out of a wider one."""
    return WIDEST_BOARD if want.grain == "matched" else want.width


def is_of_a_sheet(want):
    """Whether pieces come out of a sheet by what they are: thick as one, or wider than boards."""
    if want.width is None or want.profile:
        return False
    if is_sheet_goods(want.material) or want.together(_ROOM)[1] > WIDEST_BOARD:
        return True
    return want.thickness in _SHEET_THICK and want.width > WIDEST_STRIP


def usual_offers(wants, *, metric):
    """What is usually sold, for pieces of one wood: sheets, or boards or sticks of each piece's own
    width."""
    length, width = _USUAL_SHEET[metric]
    first = wants[0]
    form, material, thickness = _form(first), first.material, first.thickness
    if form == "sheet":
        return [("", Offer("sheet", form, material, length, width, thickness))]
    longest = max(want.together(_ROOM)[0] for want in wants)
    sold = length if metric else next((each for each in _LENGTHS if each >= longest), _LENGTHS[-1])
    return [
        ("", Offer(f"{form} {number}", form, material, sold, width, thickness, name=first.profile))
        for number, width in enumerate(dict.fromkeys(map(_usual_width, wants)))
    ]


def wood_of(want, wants):
    """Which pieces come out of one wood with this one. What comes out of sheets, and nobody said of
    what, goes with the only sheets as thick that the project needs."""
    if want.material or not is_of_a_sheet(want):
        return want.wood
    others = {
        each.wood
        for each in wants
        if each.material and each.thickness == want.thickness and is_of_a_sheet(each)
    }
    return others.pop() if len(others) == 1 else want.wood


def _form(want):
    if want.profile:
        return "stick"
    return "sheet" if is_of_a_sheet(want) else "board"
