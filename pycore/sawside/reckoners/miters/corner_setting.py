"""How is the saw set for a corner that was found with a bevel, a protractor or three lengths.

Two pieces of one width meet on the line that halves their corner, so each is cut half of it from
its own edge: from square that is 90 less half the corner.
"""

from fractions import Fraction

from sawside.drawing.miters.corner import joint
from sawside.errors import Refusal
from sawside.geometry.corner import corner_of_slope, corner_of_three, corner_within
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, angle, choice, length
from sawside.reckoners.miters.shared.corner_field import HALF, WHOLE, corner_field, past_lines
from sawside.wood.saw import SAW_CAUTIONS

_LEAST = 20
_KINDS = {"inside": "Inside corner", "outside": "Outside corner"}
_STRAIGHT = Fraction(1, 2)


def compute(given, show):
    """The corner in degrees, and the setting, which may be irrational."""
    between, off, working = _FOUND[given.found](given, show)
    outside = "outside" in (given.corner, given.read)
    if given.found == "angle" and between > HALF:
        outside, between = True, WHOLE - between
        working = past_lines(given, "angle")
    field = {"angle": "angle", "lengths": "across", "bevel": "square_over"}[given.found]
    if between < _LEAST or between > 180 - _STRAIGHT:
        raise Refusal(
            "impossible",
            f"A corner of {angle_text(between)} is "
            f"{f'sharper than {_LEAST}°' if between < _LEAST else 'as good as straight'}: no "
            "miter is cut for it.",
            "Check the readings, or join the pieces square.",
            field=field,
        )
    setting = 90 - between / 2
    corner = WHOLE - between if outside else between
    least, most = (max(between - off[0], 0), min(between + off[1], 180))
    face = (
        "the longer side lies away from the wall" if outside else "the longer side lies at the wall"
    )
    name = "Outside" if outside else "Inside"
    way = f"{name} corner: both pieces {angle_text(setting, 2)} from square, mirrored; {face}."
    words = (
        f"Two pieces meet at {angle_text(between)}. The joint halves the corner; both are cut "
        f"{angle_text(setting)} from square."
    )
    return Reckoning(
        answers={
            "setting": setting,
            "between_faces": between / 2,
            "corner": corner,
            "between": between,
            "least": 90 - most / 2,
            "most": 90 - least / 2,
            "way": way,
        },
        working=(
            *working,
            f"From square: 90 − {degrees_text(between)} ÷ 2 = {degrees_text(setting)}",
            f"The reading may be off: the corner is between {angle_text(least, 2)} and "
            f"{angle_text(most, 2)}",
        ),
        drawing=joint(
            words, between, angle_text(between), f"saw {angle_text(setting)}", outside=outside
        ),
        cautions=SAW_CAUTIONS,
    )


def _by_angle(given, _show):
    return given.angle, (given.angle_off, given.angle_off), ()


def _by_lengths(given, show):
    one, other, across = given.one_leg, given.other_leg, given.across
    a, b, c = (show.number(each) for each in (one, other, across))
    try:
        between = corner_of_three(one, other, across)
    except ValueError:
        long = across >= one + other
        raise Refusal(
            "impossible",
            f"With legs of {show.text(one)} and {show.text(other)} the distance across is "
            f"{'less than' if long else 'more than'} "
            f"{show.text(one + other if long else abs(one - other))}, and {show.text(across)} "
            "was given.",
            "Measure the three lengths again, between the same three marks.",
            field="across",
        ) from None
    least, most = corner_within(one, other, across, given.length_off)
    square = show.pure((across**2 - (one - other) ** 2) / ((one + other) ** 2 - across**2))
    line = (
        f"tan² of half the corner: ({c}² − ({a} − {b})²) ÷ (({a} + {b})² − {c}²) = "
        f"{square}; the corner: 2 × arctan √{square}{angle_equals(between)}"
    )
    return between, (between - least, most - between), (line,)


def _by_bevel(given, show):
    opens = given.bevel_opens == "open"
    along, over, off = given.along, given.square_over, given.length_off
    between = corner_of_slope(along, over, opens=opens)
    ends = [
        corner_of_slope(
            max(along + way * off, Fraction(1, 10**6)), max(over - way * off, 0), opens=opens
        )
        for way in (1, -1)
    ]
    least, most = reversed(ends) if opens else ends
    ratio = f"arctan ({show.number(over)} ÷ {show.number(along)})"
    line = f"{'180 − ' if opens else ''}{ratio}{angle_equals(between)}"
    return between, (between - least, most - between), (line,)


_FOUND = {"angle": _by_angle, "lengths": _by_lengths, "bevel": _by_bevel}
_TAPED = ("found", ("lengths",))
_BEVEL = ("found", ("bevel",))

RECKONER = Reckoner(
    key="corner_setting",
    title="Saw setting for a corner",
    asks="How is the saw set for a corner that is not square?",
    words=(
        "corner, angle, protractor, bevel gauge, sliding bevel, bisect, half, wall, out of square,"
        " miter, setting, inside corner, outside corner, diagonal"
    ),
    order=210,
    fields=(
        choice(
            "found",
            "Found by",
            {"angle": "Protractor", "lengths": "Three lengths", "bevel": "Bevel on a board"},
            help="A bevel set to the corner can be drawn on a board with a straight edge.",
        ),
        corner_field(
            "angle", "Corner", least=_LEAST, default=None, shown_when=("found", ("angle",))
        ),
        choice("read", "Read at an", _KINDS, shown_when=("found", ("angle",))),
        angle(
            "angle_off",
            "Protractor read to within",
            help="Half of its smallest division.",
            default="0.5",
            most="5",
            shown_when=("found", ("angle",)),
        ),
        length(
            "one_leg",
            "From the corner along one wall",
            help="A mark on the wall, as far out as you can reach.",
            least="1 in",
            shown_when=_TAPED,
        ),
        length(
            "other_leg",
            "From the corner along the other",
            help="On an outside corner measure along the two wall lines drawn on past the corner.",
            least="1 in",
            shown_when=_TAPED,
        ),
        length("across", "Straight across between the marks", least="1/8 in", shown_when=_TAPED),
        length(
            "along",
            "Along the edge of the board",
            help="From where the bevel's line starts at the edge.",
            least="1 in",
            shown_when=_BEVEL,
        ),
        length(
            "square_over",
            "Square over to the line",
            help="From that place on the edge to the bevel's line.",
            least="1/64 in",
            shown_when=_BEVEL,
        ),
        choice(
            "bevel_opens",
            "The bevel is",
            {"closed": "Narrower than square", "open": "Wider than square"},
            shown_when=_BEVEL,
        ),
        length(
            "length_off",
            "Lengths read to within",
            help="Half of the smallest mark that you read to.",
            default="1/32 in",
            metric="0.5 mm",
            most="1/2 in",
            shown_when=("found", ("lengths", "bevel")),
        ),
        choice("corner", "Corner of the room", _KINDS, shown_when=("found", ("lengths", "bevel"))),
    ),
    answers=(
        Answer("setting", "Saw setting, from square", "angle", sets="turned"),
        Answer("between_faces", "Angle between edge and cut", "angle"),
        Answer("corner", "Corner on the side of the room", "angle"),
        Answer("between", "Angle between the pieces", "angle"),
        Answer("least", "Setting at least, by the reading", "angle"),
        Answer("most", "Setting at most, by the reading", "angle"),
        Answer("way", "At the saw", "text"),
    ),
    source=(
        "The joint of two pieces of one width halves their corner: plane geometry. Three lengths: "
        "law of cosines. Taking half the smallest division as the doubt of a reading is common "
        "practice, no source."
    ),
    compute=compute,
    example={
        "found": "lengths",
        "one_leg": "24",
        "other_leg": "18",
        "across": "30 1/8",
        "length_off": "1/32",
        "corner": "inside",
    },
)
