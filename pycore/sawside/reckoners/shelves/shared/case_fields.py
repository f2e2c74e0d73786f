"""What the questions about the shelves of one case share: fields, answers and their checks."""

from sawside.errors import Refusal
from sawside.geometry.case import EDGES, FEET, HEADS, ORIGINS, Case
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import sign
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer
from sawside.reckoners.fields import choice, length
from sawside.reckoners.shared.board_fields import thickness
from sawside.reckoners.shared.numbered import numbered

MOST_SHELVES = 60
CAUTIONS = (
    "A tall case can tip. Anchor it to a stud, follow the anchor’s instructions and local code, "
    "and keep heavy things low.",
)
_HEIGHT = "Inside height, unless you pick Whole case below."
_WHOLE = ("case_parts", ("whole",))

THICKNESS = thickness(
    label="Shelf thickness", help="Measure it. Sheet goods run thinner than their nominal size."
)
MARKING = (
    choice("edge", "Line to mark", EDGES),
    choice(
        "case_parts",
        "Case",
        {"inside": "Inside only", "whole": "Whole case (top, bottom, toe kick)"},
        help="With the whole case you can mark from the floor or from an end of the side.",
    ),
    choice(
        "height_is",
        "Which height",
        {"overall": "Overall, floor to top of case", "inside": "Inside, bottom to top"},
        shown_when=_WHOLE,
    ),
    thickness("bottom", "Bottom thickness", least="0 in", shown_when=_WHOLE),
    thickness("top", "Top thickness", least="0 in", shown_when=_WHOLE),
    length(
        "kick",
        "Toe kick",
        help="Floor to the underside of the bottom.",
        default='0"',
        most="24 in",
        shown_when=_WHOLE,
    ),
    choice("foot", "Bottom end of side", FEET, shown_when=_WHOLE),
    choice("head", "Top end of side", HEADS, shown_when=_WHOLE),
    choice("origin", "Marked from", ORIGINS, shown_when=_WHOLE),
)
"""How a side is marked, and the parts of the case that this may need."""


def height_field(**more):
    """The field of the height, which is the inside's or the whole case's."""
    return length("height", "Height", help=_HEIGHT, least="1/4 in", **more)


MARKED = (
    Answer("openings", "Openings, using these marks", "lengths", must="agree"),
    Answer("difference", "Biggest difference between openings", must="agree"),
    Answer("side", "Side length", must="case"),
    Answer("overall", "Overall case height", must="case"),
)
"""What comes of the marks; side and overall only where all parts of the case are known."""


def inside_height(given, show):
    """The clear height, or None where the height is blank; "impossible" where nothing is left."""
    if given.height is None or given.case_parts == "inside" or given.height_is == "inside":
        return given.height
    inside = given.height - given.bottom - given.top - given.kick
    if inside <= 0:
        raise Refusal(
            "impossible",
            f"The toe kick, bottom and top add up to {show.text(given.height - inside)}, but the "
            f"overall height is {show.text(given.height)}.",
            "Enter a bigger height or thinner parts.",
            field="height",
        )
    return inside


def inside_working(given, show, inside):
    """The line that takes the parts of the case from its overall height, where that was given."""
    if given.height is None or inside == given.height:
        return ()
    parts = " − ".join(show.number(each) for each in (given.kick, given.bottom, given.top))
    return (f"Inside: {show.number(given.height)} − {parts}{show.equals(inside)}",)


def measured_field(given):
    """The key of the field that asked for the height as it is drawn, or None."""
    as_drawn = given.case_parts == "inside" or given.height_is == "overall"
    return "height" if given.height is not None and as_drawn else None


def case_of(given, inside):
    """The case of a form, with the clear height that was given or worked out."""
    if given.case_parts == "inside":
        return Case(inside)
    return Case(inside, given.bottom, given.top, given.kick, given.foot, given.head, whole=True)


def origin_of(given):
    """Where the marks are measured from."""
    return given.origin or "inside_bottom"


def marked_as(given):
    """The sentence that says what the marks are: of which edge, from where."""
    way = "down from" if given.origin == "upper_end" else "from"
    place = ORIGINS[origin_of(given)]
    return f"{EDGES[given.edge]} of each shelf, {way} the {place[0].lower()}{place[1:]}"


def marked_answers(shelving, show):
    """The answers of `MARKED`, and the marks themselves where there are shelves.

    "impossible" where the marks leave nothing of an opening.
    """
    found = shelving.openings_marked(show.mark)
    for number, opening in enumerate(found, 1):
        if sign(opening) <= 0:
            raise Refusal(
                "impossible",
                f"With these marks, opening {number} closes up: the shelves are too close.",
                "Use fewer shelves or bigger openings, or pick a finer mark in Settings.",
                field="thickness",
            )
    fine = [on_fine_marks(each, show) for each in found]
    marks = {"marks": numbered("Shelf", shelving.marks)} if shelving.marks else {}
    answers = {
        "openings": numbered("Opening", fine),
        "difference": on_fine_marks(max(found) - min(found), show),
    }
    return marks | answers | outer_heights(shelving.case)


def outer_heights(case):
    """The answers about the heights of a case whose parts are known."""
    return {"side": case.side, "overall": case.overall} if case.whole else {}


def shelves_text(count):
    """ "1 shelf", "2 shelves"."""
    return counted(count, "shelf", "shelves")


def refuse_too_many(count, field):
    """ "impossible" above the most shelves that a question takes."""
    if count > MOST_SHELVES:
        raise Refusal(
            "impossible",
            f"That makes {count} shelves. The most is {MOST_SHELVES}.",
            "Enter a bigger opening.",
            field=field,
        )


def refuse_no_room(show, shelves, taken, inside):
    """ "impossible" where the shelves fill the inside."""
    if taken >= inside:
        raise Refusal(
            "impossible",
            f"{shelves_text(shelves)} {'takes' if shelves == 1 else 'take'} up "
            f"{show.text(taken)}, but the inside height is {show.text(inside)}.",
            "Use fewer or thinner shelves.",
            field="shelf_count",
        )
