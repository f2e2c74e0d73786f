"""How long a shelf is between two sides: in dadoes, on pins, or fitted; or how wide the case is."""

from sawside.drawing.choices.joints import SHELF_FITS
from sawside.drawing.choices.measures import CASE_WIDTHS
from sawside.drawing.shelves.shelf_in_case import shelf_in_case
from sawside.drawing.square_piece import square_piece
from sawside.errors import Refusal
from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.declaration import Alike, Answer, End, Fit, Part, Reckoner, Reckoning
from sawside.reckoners.fields import choice, clearance, count, length
from sawside.reckoners.shared.board_fields import thickness

_CAUTIONS = (
    "Measure the width at each shelf’s height, front and back. A case is rarely the same "
    "everywhere.",
)
_SQUARE = End("square", "0°")
_SIDES = ("left", "right")
_IN_DADOES = ("joint", ("dado",))


def compute(given, show):
    """Shelf length and inside width, whichever was blank, with what the joint adds or takes."""
    adds, free = _joint(given)
    sides = 2 * given.side_thickness if given.width_is == "outside" else 0
    inside, shelf = _solved(given, adds - 2 * free, sides)
    _refuse_deep_clearance(given, show)
    fits = show.rounded(shelf, "go in")
    case = show if given.shelf is None else show.by("reach")  # the shelf has to go into it
    picture = square_piece(show, "A shelf", fits, given.depth, given=given.shelf is not None)
    return Reckoning(
        answers={
            "shelf": fits,
            "inside": case.rounded(inside),
            "width": case.rounded(inside + sides),
            "change": adds - 2 * free,
        },
        working=tuple(_working(given, case, fits, inside, sides, adds, free)),
        drawing=shelf_in_case(
            show, given, (fits, case.rounded(inside), case.rounded(inside + sides))
        ),
        cautions=_CAUTIONS,
        parts=(_part(given, show, fits, picture),),
    )


def _joint(given):
    """(what both dadoes add to the shelf, the room at each end)."""
    if given.joint == "dado":
        return given.left_depth + given.right_depth, given.play
    return 0, given.gap if given.joint == "pins" else 0


def _solved(given, change, sides):
    """(inside width, shelf length), the blank one worked out; "impossible" where one is nothing."""
    if given.shelf is None:
        inside = given.width - sides
        shelf = inside + change
    else:
        shelf = given.shelf
        inside = shelf - change
    if inside <= 0 or shelf <= 0:
        raise Refusal(
            "impossible",
            "There’s no room left between the sides.",
            "Enter a bigger width or less clearance.",
            field="width" if given.shelf is None else "shelf",
        )
    return inside, shelf


def _refuse_deep_clearance(given, show):
    """ "impossible" where the clearance takes the shelf out of a dado."""
    for side in _SIDES if given.joint == "dado" else ():
        if getattr(given, f"{side}_depth") < given.play:
            raise Refusal(
                "impossible",
                f"The clearance of {show.text(given.play)} is more than the {side} dado’s depth.",
                "Use less clearance or a deeper dado.",
                field="play",
            )


def _part(given, show, fits, picture):
    return Part(
        key="shelf",
        name="Shelf",
        length=fits,
        width=given.depth,
        thickness=on_fine_marks(given.thickness, show),
        count=given.how_many,
        left=_SQUARE,
        right=_SQUARE,
        drawing=picture,
    )


def _working(given, show, fits, inside, sides, adds, free):
    side = f"2 × {show.number(given.side_thickness)}" if sides else ""
    dado = (show.number(given.left_depth), show.number(given.right_depth)) if adds else ()
    play = f"2 × {show.number(free)}" if free else ""
    if given.shelf is None:
        if sides:
            yield f"Inside: {show.number(given.width)} − {side}{show.equals(inside)}"
        sum_ = " + ".join((show.number(inside), *dado)) + (f" − {play}" if play else "")
        yield f"Shelf: {sum_}{show.equals(fits)}"
        return
    sum_ = " − ".join((show.number(fits.exact), *dado)) + (f" + {play}" if play else "")
    yield f"Inside: {sum_}{show.equals(inside)}"
    if sides:
        yield f"Outside: {show.number(inside)} + {side}{show.equals(inside + sides)}"


def _room(given):
    """(field, room at both ends together); None for a shelf that is fixed tight."""
    key = {"dado": "play", "pins": "gap"}.get(given.joint)
    return key and (key, 2 * getattr(given, key))


def _room_of_shelf(given):
    return _room(given) if given.shelf is None else None


def _room_of_case(given):
    return None if given.shelf is None else _room(given)


RECKONER = Reckoner(
    key="shelf_length",
    title="Shelf length",
    asks="How long is a shelf between its sides?",
    words=(
        "how long, length, shelf length, dado, clearance, inside width, outside width, fit, "
        "fixed shelf, adjustable shelf, shelf pins, cabinet, case, bookcase"
    ),
    order=312,
    job="shelves",
    picture={
        "wood": "M3 4h7v32H3zM30 4h7v32h-7zM7 14h26v6H7z",
        "chalk": "M7 28h26m-3-3l3 3-3 3M10 25l-3 3 3 3",
    },
    basic=("width", "shelf", "width_is", "side_thickness", "joint"),
    alike=(Alike(noun="dadoes"),),
    makes_parts=True,
    fields=(
        length(
            "width",
            "Case width",
            in_short="case {}",
            least="1 in",
            blank_means="Figured from the shelf.",
        ),
        length("shelf", "Shelf length", least="1/2 in", blank_means="Figured from the width."),
        choice(
            "width_is",
            "Width measured",
            {"inside": "Inside, between the sides", "outside": "Outside, across both sides"},
            pictures=CASE_WIDTHS,
            in_short="{}",
            default=None,
        ),
        thickness(
            "side_thickness", "Side thickness", least="0 in", shown_when=("width_is", ("outside",))
        ),
        choice(
            "joint",
            "Shelf fit",
            {
                "dado": "In dadoes or rabbets",
                "pins": "Loose, on pins or cleats",
                "fixed": "Tight between the sides",
            },
            pictures=SHELF_FITS,
            in_short="shelf {}",
            default=None,
        ),
        *(
            length(
                f"{side}_depth",
                f"{side.capitalize()} dado depth",
                default='1/4"',
                metric="6 mm",
                most="6 in",
                shown_when=_IN_DADOES,
            )
            for side in _SIDES
        ),
        clearance(
            "play",
            "Clearance at each end",
            "clearance_in_dado",
            help="Leaves room for glue at the bottom of each dado.",
            most="1 in",
            shown_when=_IN_DADOES,
        ),
        clearance(
            "gap",
            "Gap at each end",
            "clearance_on_pins",
            help="So you can tilt the shelf out.",
            most="2 in",
            shown_when=("joint", ("pins",)),
        ),
        length(
            "depth",
            "Shelf depth",
            help="Front to back.",
            default='12"',
            metric="300 mm",
            least="1/2 in",
        ),
        thickness(label="Shelf thickness"),
        count("how_many", "How many shelves", default="1", least="1", most="100"),
    ),
    answers=(
        Answer("shelf", "Shelf length", must="go in"),
        Answer("inside", "Inside width", must="case"),
        Answer("width", "Case width", must="case"),
        Answer("change", "Shelf minus inside width", must="go in"),
    ),
    source="Arithmetic; the default clearances are shop practice.",
    compute=compute,
    verdict="Shelf length (inside is {inside})",
    example={
        "width": "36 5/8",
        "shelf": "",
        "width_is": "outside",
        "side_thickness": "23/32",
        "joint": "dado",
        "depth": "14 1/4",
        "thickness": "23/32",
        "how_many": "2",
    },
    solve_one_of=("width", "shelf"),
    fits=(Fit("shelf", _room_of_shelf, "less"), Fit("inside", _room_of_case, "more")),
)
