"""Dadoes across both sides, and rabbets at their ends: where, how wide, how deep."""

from sawside.drawing.paper.story_stick import story_stick
from sawside.drawing.shelves.sides import Sides
from sawside.errors import Refusal
from sawside.geometry.case import EDGES
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer, Fit, Reckoner, Reckoning, choice, length, lengths
from sawside.reckoners.shared.board_fields import thickness
from sawside.reckoners.shared.panel_fields import SOLD_AS, thickness_warnings
from sawside.reckoners.shelves.shared.dado_cuts import a_third, cuts_of
from sawside.reckoners.shelves.shared.side_fields import SIDE, SIDE_DEPTH

_CAUTIONS = (
    "A dado set belongs only on a saw whose maker allows it, with the guard and insert that the "
    "maker says. Unplug before changing it, and use push blocks.",
    "Prove the width on scrap with an offcut of the very panel before cutting a side.",
    "Lay the two sides with their front edges outwards and mark both at once, so that they are "
    "mirror images.",
)


def compute(given, show):
    """The edges of each dado, one width and one depth for all, and the wood that is left."""
    width = given.shelf + given.play
    depth = a_third(given, show) if given.dado_depth is None else given.dado_depth
    if depth >= given.side_thickness:
        raise Refusal(
            "impossible",
            f"A dado {fine_text(depth, show)} deep goes through a side of "
            f"{fine_text(given.side_thickness, show)}.",
            "Give a smaller depth; a third of the side is usual.",
            field="dado_depth",
        )
    cuts = cuts_of(given, show, width)
    left = given.side_thickness - depth
    marks = [
        (f"{name}, {edge}", place)
        for name, low, high in cuts
        for edge, place in (("lower edge", low), ("upper edge", high))
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
            show, given.side, marks, name="Dadoes of a side", start="Lower end of the side"
        ),
    )


def _warnings(given, show, depth, left, cuts):
    if 2 * depth > given.side_thickness:
        yield (
            f"The dado takes more than half of the side: only {fine_text(left, show)} is left. A "
            "third is usual (common practice, no source)."
        )
    edges = [0, *(edge for _, low, high in cuts for edge in (low, high)), given.side]
    slivers = [
        high - low
        for low, high in zip(edges[::2], edges[1::2], strict=True)
        if 0 < high - low < given.side_thickness
    ]
    if slivers:
        yield (
            f"Only {show.text(min(slivers))} of wood is left beside a dado, less than the side is "
            "thick: it may break out (common practice, no source)."
        )
    if given.play > given.shelf / 16:
        yield f"{fine_text(given.play, show)} of play is loose for glue."


def _working(given, show, width, depth, cuts):
    shelf, side = show.number(given.shelf), show.number(given.side_thickness)
    play = show.number(given.play)
    yield f"Width, as measured and with play: {shelf} + {play} = {show.number(width)}"
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
        f"Both sides from inside as mirror images, front edges outside, with "
        f"{counted(len(cuts), 'cut')} across each. The figures are the heights of the "
        "lower edges above the lower end."
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
    fields=(
        SIDE,
        SIDE_DEPTH,
        thickness("side_thickness", "Thickness of the side", least="1/8 in"),
        thickness("shelf", "Shelf thickness", help="As measured with a caliper, not as sold."),
        SOLD_AS,
        length(
            "play",
            "Play",
            help="How much wider than the shelf a dado is, for glue and finish.",
            default='0"',
            most="1/4 in",
        ),
        length(
            "dado_depth",
            "Depth of the dado",
            least="1/64 in",
            most="6 in",
            blank_means="A third of the side's thickness, to a sixteenth or a whole millimeter "
            "(common practice, no source).",
        ),
        lengths(
            "places",
            "Shelves",
            help="The height of each shelf, of the edge and from the end that you choose below.",
            row_label="Shelf",
            most_rows=60,
            blank_means="Only the rabbets are cut.",
        ),
        choice("edge", "Heights are of the shelf's", EDGES),
        choice(
            "measured",
            "Heights are from",
            {"lower": "The lower end of the side", "upper": "The upper end of the side"},
        ),
        choice(
            "run",
            "The dadoes",
            {"through": "Run through to the front", "stopped": "Stop before the front edge"},
        ),
        length(
            "stop",
            "Stopped before the front edge",
            default='1/2"',
            metric="12 mm",
            most="24 in",
            shown_when=("run", ("stopped",)),
        ),
        choice(
            "rabbets",
            "Rabbets for top and bottom",
            {
                "none": "None",
                "upper": "At the upper end",
                "lower": "At the lower end",
                "both": "At both ends",
            },
        ),
        thickness(
            "panel",
            "Thickness of the panel in the rabbet",
            shown_when=("rabbets", ("upper", "lower", "both")),
        ),
    ),
    answers=(
        Answer("lower", "Lower edges, from the lower end", "lengths", must="agree"),
        Answer("upper", "Upper edges, from the lower end", "lengths", must="agree"),
        Answer("width", "Width of a dado", must="reach"),
        Answer("depth", "Depth", must="reach"),
        Answer("left", "Wood left behind it", must="be there"),
        Answer("longer", "A shelf in two dadoes is longer by", must="go in"),
    ),
    source=(
        "Arithmetic. A depth of a third of the side is common practice, no source; width by the "
        "measured panel."
    ),
    compute=compute,
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
