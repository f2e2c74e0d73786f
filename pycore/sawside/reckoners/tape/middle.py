"""The middle between two places on the tape, and where a thing goes that is centered there."""

from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.errors import Refusal
from sawside.lengths.fine import fine_text
from sawside.lengths.real import nearby
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import length

_SCREEN = 300
"""Pixels of the span on a narrow phone."""


def compute(given, show):
    """Middle, half the span, and the edges of what is centered; all as the tape reads them."""
    low, high = sorted((given.first, given.last))
    span = high - low
    if not span:
        raise Refusal(
            "impossible",
            f"Both ends are at {show.text(low)}, so there’s nothing between them.",
            "Enter what the tape reads at each end.",
            field="last",
        )
    middle = (low + high) / 2
    marks = [("Center", middle)]
    side = span / 2
    working = [f"({show.number(low)} + {show.number(high)}) ÷ 2{show.equals(middle)}"]
    if given.width is not None:
        if given.width > span:
            raise Refusal(
                "impossible",
                f"It’s {show.text(given.width)} wide and the span is only {show.text(span)}.",
                "Make the wider one the span, and center the other in it.",
                field="width",
            )
        side = (span - given.width) / 2
        marks = [("First edge", low + side), *marks, ("Second edge", high - side)]
        width = show.number(given.width)
        working += [
            f"On each side: ({show.number(span)} − {width}) ÷ 2{show.equals(side)}",
            f"First edge: {show.number(low)} + {show.number(side)}{show.equals(low + side)}",
            f"Second edge: {show.number(low + side)} + {width}{show.equals(high - side)}",
        ]
    where = "from each end" if given.width is None else "on each side"
    return Reckoning(
        answers={"middle": middle, "marks": marks, "side": side, "span": span},
        working=tuple(working),
        drawing=_drawing(show, (low, high), middle, given.width, side),
        verdict=f"Center ({show.brief(side)} {where})",
    )


def _drawing(show, ends, middle, width, side):
    """The span between its two ends, the middle, and what stands there."""
    low, high = ends
    span = nearby(high - low)
    pixel = span / _SCREEN
    deep, room = 48 * pixel, 30 * pixel
    half = span / 2
    shapes = [
        polygon([(x, -deep / 4), (x + room / 2, -deep / 4), (x + room / 2, deep), (x, deep)])
        for x in (-room / 2, span)
    ]
    shapes.append(line((0, deep), (span, deep), "edge"))
    if width is not None:
        left, right = nearby(side), span - nearby(side)
        top = deep / 4
        shapes.append(polygon([(left, top), (right, top), (right, deep), (left, deep)]))
        if nearby(side) > 0:
            shapes.append(dimension((left, deep), (0, deep), room, show.brief(side), "answer"))
            shapes.append(dimension((span, deep), (right, deep), room, show.brief(side), "answer"))
    else:
        shapes.append(dimension((half, deep), (0, deep), room, show.brief(side), "answer"))
    shapes += [
        line((half, -deep / 2), (half, deep + room / 4), "center"),
        label((half, -deep * 3 / 4), show.brief(middle), "name"),
        label((0, -deep / 2), fine_text(low, show), "note", "start"),
        label((span, -deep / 2), fine_text(high, show), "note", "end"),
    ]
    words = (
        f"A span from {fine_text(low, show)} to {fine_text(high, show)} on the tape, its center "
        f"at {show.brief(middle)}."
    )
    if width is not None:
        words += (
            f" The part centered in it, {fine_text(width, show)} wide, leaves {show.brief(side)} "
            "on each side."
        )
    return drawing(words, (-room / 2, -deep * 5 / 4, span + room / 2, deep + 2 * room), shapes)


RECKONER = Reckoner(
    key="middle",
    title="Find the center",
    asks="Where’s the center, and where do I set something centered in it?",
    words=(
        "center, center line, CL, find the center, half, halve, halfway, midpoint, between, "
        "edges, center a knob, center a pull, handle, middle"
    ),
    order=120,
    job="layout",
    picture={
        "wood": "M3 12h34v12H3z",
        "ink": "M4 32h13M23 32h13M7 29l-3 3 3 3M33 29l3 3-3 3",
        "chalk": "M20 6v30",
    },
    fields=(
        length(
            "first",
            "From",
            help="What the tape reads at one end. 0 if it’s hooked there.",
            default="0",
        ),
        length("last", "To", help="What it reads at the other end."),
        length(
            "width",
            "Part width",
            help="A divider, a pull or a shelf, measured across the span.",
            least="1/64 in",
            blank_means="Finds just the center.",
        ),
    ),
    answers=(
        Answer("middle", "Center, on the tape", must="agree"),
        Answer("marks", "Marks, on the same tape", "lengths", must="agree"),
        Answer("side", "On each side", must="agree"),
        Answer("span", "Span", must="agree"),
    ),
    source="Arithmetic: half of the two readings' sum. Shop practice.",
    compute=compute,
    example={"first": "0", "last": "37 9/16", "width": "23/32"},
)
