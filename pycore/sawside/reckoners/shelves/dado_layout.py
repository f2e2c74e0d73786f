"""Dadoes across both sides, and rabbets at their ends: where, how wide, how deep."""

from sawside.drawing.choices.joints import DADO_RUNS
from sawside.drawing.paper.story_stick import story_stick
from sawside.drawing.shelves.sides import Sides
from sawside.errors import Refusal
from sawside.geometry.case import EDGES
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer, Fit, Reckoner, Reckoning
from sawside.reckoners.fields import choice, length, lengths
from sawside.reckoners.shared.board_fields import thickness
from sawside.reckoners.shared.panel_fields import SOLD_AS, thickness_warnings
from sawside.reckoners.shelves.shared.dado_cuts import a_third, cuts_of
from sawside.reckoners.shelves.shared.side_fields import SIDE, SIDE_DEPTH

_CAUTIONS = (
    "Use a dado set only on a saw built for it. Fit the guard and insert the maker calls for, "
    "unplug before you change it, and use push blocks.",
    "Test the dado width in scrap. Use an offcut of the same sheet.",
    "Mark both sides at once, front edges out. That makes them mirror images.",
)


def compute(given, show):
    """The edges of each dado, one width and one depth for all, and the wood that is left."""
    width = given.shelf + given.play
    depth = a_third(given, show) if given.dado_depth is None else given.dado_depth
    if depth >= given.side_thickness:
        raise Refusal(
            "impossible",
            f"A dado {fine_text(depth, show)} deep would go right through the side, which is "
            f"{fine_text(given.side_thickness, show)}.",
            "Enter a smaller depth; a third of the side is usual.",
            field="dado_depth",
        )
    cuts = cuts_of(given, show, width)
    left = given.side_thickness - depth
    marks = [
        (f"{name}, {edge}", place)
        for name, low, high in cuts
        for edge, place in (("bottom edge", low), ("top edge", high))
    ]
    names = [name for name, _, _ in cuts]
    return Reckoning(
        answers={
            "lower": list(zip(names, (low for _, low, _ in cuts), strict=True)),
            "upper": list(zip(names, (high for _, _, high in cuts), strict=True)),
            "width": on_fine_marks(width, show, "reach"),
            "depth": on_fine_marks(depth, show, "reach"),
            "left": on_fine_marks(left, show, "be there"),
            "longer": on_fine_marks(2 * depth, show, "go in"),
        },
        working=tuple(_working(given, show, width, depth, cuts)),
        drawing=_drawing(given, show, cuts),
        cautions=(
            *_warnings(given, show, depth, left, cuts),
            *thickness_warnings(given, given.shelf, show),
            *_CAUTIONS,
        ),
        stick=story_stick(
            show, given.side, marks, name="Dadoes, one side", start="Bottom end of the side"
        ),
    )


def _warnings(given, show, depth, left, cuts):
    if 2 * depth > given.side_thickness:
        yield (
            f"The dado takes more than half the side: only {fine_text(left, show)} is left. A "
            "third is usual (shop practice)."
        )
    edges = [0, *(edge for _, low, high in cuts for edge in (low, high)), given.side]
    slivers = [
        high - low
        for low, high in zip(edges[::2], edges[1::2], strict=True)
        if 0 < high - low < given.side_thickness
    ]
    if slivers:
        yield (
            f"There’s only {show.text(min(slivers))} of wood beside a dado, less than the side’s "
            "thickness. It could break out (shop practice)."
        )
    if given.play > given.shelf / 16:
        yield f"{fine_text(given.play, show)} of extra width is loose for a glue joint."


def _working(given, show, width, depth, cuts):
    shelf, side = show.number(given.shelf), show.number(given.side_thickness)
    play = show.number(given.play)
    yield f"Width, shelf plus extra: {shelf} + {play} = {show.number(width)}"
    if given.dado_depth is None:
        third = given.side_thickness / 3
        yield f"Depth: {side} ÷ 3 = {show.number(third)}; set {show.number(depth)}"
    left = given.side_thickness - depth
    yield f"Left behind it: {side} − {show.number(depth)} = {show.number(left)}"
    for name, low, high in cuts[:6]:
        yield f"{name}: {show.number(low)} + {show.number(high - low)}{show.equals(high)}"
    yield (
        f"A shelf in two dadoes is 2 × {show.number(depth)}"
        f"{show.equals(on_fine_marks(2 * depth, show, 'go in'))} longer"
    )


def _drawing(given, show, cuts):
    sides = Sides(given.side, given.depth)
    stop = given.stop or 0
    for name, low, high in cuts:
        sides.band(low, high, "hatch", stop if name.startswith("Dado") else 0)
    for _, low, _ in cuts:
        sides.figure(low, show.brief(low))
    words = (
        f"Both sides from inside as mirror images, front edges out, with "
        f"{counted(len(cuts), 'cut')} across each. The numbers are the heights of the "
        "bottom edges above the bottom end."
    )
    return sides.drawn(words, show.brief(given.side))


RECKONER = Reckoner(
    key="dado_layout",
    title="Dadoes and rabbets",
    asks="Where do the dadoes go, and how wide and deep are they?",
    words=(
        "dado, stopped dado, rabbet, groove, slot for a shelf, shelf joint, dado width, dado "
        "depth, plywood thickness, bookcase, story stick"
    ),
    order=311,
    job="shelves",
    picture={"wood": "M7 3h14v8h-6v5h6v9h-6v5h6v7H7z", "chalk": "M37 11H15v5h22M37 25H15v5h22"},
    basic=("side", "depth", "shelf", "places"),
    fields=(
        SIDE,
        SIDE_DEPTH,
        thickness("side_thickness", "Side thickness", least="1/8 in"),
        thickness(
            "shelf",
            "Shelf thickness",
            help="Measure it with a caliper. Don’t go by the nominal size.",
        ),
        SOLD_AS,
        length(
            "play",
            "Extra width",
            help="Added to the dado, for glue and finish.",
            default='0"',
            most="1/4 in",
        ),
        length(
            "dado_depth",
            "Dado depth",
            least="1/64 in",
            most="6 in",
            blank_means="A third of the side’s thickness, to a sixteenth or a whole millimeter "
            "(shop practice).",
        ),
        lengths(
            "places",
            "Shelf heights",
            help="To the line and from the end you pick below.",
            row_label="Shelf",
            most_rows=60,
            blank_means="Rabbets only.",
        ),
        choice("edge", "Shelf line", EDGES),
        choice(
            "measured",
            "Measured from",
            {"lower": "Bottom end of the side", "upper": "Top end of the side"},
        ),
        choice(
            "run",
            "Dado type",
            {"through": "Through to the front", "stopped": "Stopped short of the front edge"},
            pictures=DADO_RUNS,
        ),
        length(
            "stop",
            "Stop from the front",
            default='1/2"',
            metric="12 mm",
            most="24 in",
            shown_when=("run", ("stopped",)),
        ),
        choice(
            "rabbets",
            "End rabbets",
            {
                "none": "None",
                "upper": "At the top end",
                "lower": "At the bottom end",
                "both": "At both ends",
            },
        ),
        thickness(
            "panel", "Rabbeted panel thickness", shown_when=("rabbets", ("upper", "lower", "both"))
        ),
    ),
    answers=(
        Answer("lower", "Bottom edges, from the bottom end", "lengths", must="agree"),
        Answer("upper", "Top edges, from the bottom end", "lengths", must="agree"),
        Answer("width", "Dado width", must="reach"),
        Answer("depth", "Dado depth", must="reach"),
        Answer("left", "Wood left behind it", must="be there"),
        Answer("longer", "Add to the shelf length", must="go in"),
    ),
    source=(
        "Arithmetic. A depth of a third of the side is shop practice; the width is the measured "
        "panel’s. Plywood limits: NIST Voluntary Product Standard PS 1, thickness by performance "
        "category."
    ),
    compute=compute,
    verdict="Dadoes ({width} wide, {depth} deep)",
    example={
        "side": "44 1/2",
        "depth": "14 1/2",
        "side_thickness": "23/32",
        "shelf": "23/32",
        "sold_as": "ps1_23_32",
        "dado_depth": "1/4",
        "places": ["3 in", "16 19/32 in", "30 3/16 in"],
        "rabbets": "upper",
        "panel": "23/32",
    },
    fits=(Fit("width", lambda given: ("play", given.play), "more"),),
)
