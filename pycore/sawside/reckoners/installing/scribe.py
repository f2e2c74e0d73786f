"""How a strip beside a case that is up is scribed to its wall, and what is left of it."""

from sawside.drawing.installing.scribed_strip import scribed_strip
from sawside.drawing.square_piece import square_piece
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.declaration import Answer, End, Part, Reckoner, Reckoning
from sawside.reckoners.fields import length, lengths
from sawside.reckoners.installing.shared.scribe.strip import scribed_of
from sawside.reckoners.shared.board_fields import thickness
from sawside.wood.caution import Caution
from sawside.wood.numbers import metric

_SQUARE = End("square", "0°")
_HOLD = 6 * INCHES_PER["mm"]
"""The least of a strip that can be held and planed. Common practice, no source."""
_CUT = Caution(
    "Clamp the strip to cut it.",
    "Clamp the strip to cut it, hands behind the blade. The saw maker’s instructions come first.",
)


def compute(given, show):
    """The compass's setting, and the width of the strip (inches) at each height."""
    strip = scribed_of(given, show)
    least = show.rounded(strip.least, "go in")
    answers = {
        "compass": on_fine_marks(strip.compass, show, "reach"),
        "rip": strip.wide,
        "widths": [
            (f"{show.brief(height)} up", show.rounded(strip.left(gap), "go in"))
            for height, gap in strip.gaps
            if strip.left(gap)
        ],
        **({"least": least} if strip.least else {}),
    }
    return Reckoning(
        answers=answers,
        working=tuple(_working(given, show, strip)),
        drawing=scribed_strip(show, given, strip),
        cautions=(*_narrow(show, strip, least), _CUT),
        parts=(_part(given, show, strip),),
        verdict=f"Rip {show.bare(strip.wide)}, set the compass to",
        fixes=(("Wider lap", "lap"),) if strip.least < _HOLD else (),
    )


def _narrow(show, strip, least):
    """What is said of a strip that is hardly there where the wall is near."""
    if strip.least >= _HOLD:
        return
    told = f"only {show.brief(least)}" if strip.least else "nothing"
    yield (
        f"Where the wall is nearest, {told} of the strip is left. Most shops leave about "
        f"{'6 mm' if metric(show) else '1/4″'}, to hold it and plane it: move the case over, or "
        "let the strip lap it (shop practice)."
    )


def _working(given, show, strip):
    number = show.number
    gaps = ", ".join(number(gap) for _, gap in strip.gaps)
    yield f"Smallest of {gaps}: {number(strip.smallest)}"
    if given.strip is None:
        yield (
            f"Rip to: {number(strip.widest)} + {number(strip.lap)} + {number(given.spare)}"
            f"{show.equals(strip.wide)}"
        )
    yield (
        f"Compass: {number(strip.wide.mark)} − {number(strip.lap)} − {number(strip.smallest)} = "
        f"{number(strip.compass)}"
    )
    for height, gap in strip.gaps:
        width = strip.left(gap)
        told = show.equals(show.rounded(width, "go in")) if width else " = 0"
        yield f"Width {number(height)} up: {number(gap)} + {number(strip.lap)}{told}"


def _part(given, show, strip):
    long = show.rounded(given.long, "go in")
    return Part(
        key="strip",
        name="Scribe strip",
        length=long,
        width=strip.wide,
        thickness=on_fine_marks(given.thickness, show),
        left=_SQUARE,
        right=_SQUARE,
        drawing=square_piece(show, "Scribe strip", long, strip.wide.mark),
        about=("Scribed to the wall along one edge.",),
    )


RECKONER = Reckoner(
    key="scribe",
    title="Scribe line",
    asks="How do I scribe this strip to the wall, and what’s left of it?",
    words=(
        "scribe line, scribe a filler, scribing, compass, scribing block, filler strip, filler, "
        "fit to a crooked wall, gap at the wall, gap between cabinet and wall, wavy wall, "
        "taper, tapered filler, scribe to the wall, transfer the wall"
    ),
    order=1440,
    job="putting it up",
    picture={
        "wood": "M3 3h15v34H3zM18 3h8l3 9-2 10 2 15H18z",
        "ink": "M18 3v34M34 2l3 10-2 10 2 16",
        "chalk": "M28 28h8M28 25v6M36 25v6",
    },
    basic=("gaps", "long"),
    makes_parts=True,
    fields=(
        lengths(
            "gaps",
            "Gaps, case to wall",
            row_label="Gap",
            most_rows=12,
            most="24 in",
            help="Bottom to top at even steps, with the case plumb and screwed fast. Hold the "
            "strip upright to draw.",
            in_short="gaps {}",
        ),
        length("long", "Strip length", least="1 in", most="20 ft", in_short="{} long"),
        length(
            "lap",
            "Lap",
            help="How much of the strip goes behind or over the case’s edge.",
            default='0"',
            metric="0 mm",
            most="6 in",
        ),
        length(
            "strip",
            "Strip you have",
            help="Its width.",
            least="1/8 in",
            most="36 in",
            blank_means="As wide as it takes, with the extra below.",
        ),
        length(
            "spare",
            "Extra width",
            help="For what the wall does between your readings.",
            default='1/4"',
            metric="6 mm",
            most="6 in",
        ),
        thickness(),
    ),
    answers=(
        Answer("compass", "Compass or scribing block", must="reach"),
        Answer("rip", "Rip the strip to", must="reach"),
        Answer("widths", "Strip left, by height", "lengths", must="go in"),
        Answer("least", "Narrowest", must="go in"),
    ),
    source=(
        "Arithmetic: held upright against the wall, the strip touches where the gap is smallest; "
        "it has to move by its width less that gap and its lap, and a compass set to that draws "
        "the wall so far in. 1/4″ (6 mm) at the narrowest: common practice, no source."
    ),
    compute=compute,
    example={"gaps": ["3/4", "7/16", "5/8"], "long": "76"},
)
