"""How is the saw set for a corner that was found with a bevel, a protractor or three lengths.

Two pieces of one width meet on the line that halves their corner, so each is cut half of it from
its own edge: from square that is 90 less half the corner.
"""

from fractions import Fraction

from sawside.drawing.miters.corner import joint
from sawside.errors import Refusal
from sawside.geometry.corner import corner_of_slope, corner_of_three, corner_within
from sawside.geometry.miter import half_corner
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, angle, choice, length
from sawside.reckoners.miters.shared.corner_field import WHOLE, corner_field, past_lines
from sawside.wood.saw import SAW_CAUTIONS

_LEAST = 20
_KINDS = {"inside": "Inside corner", "outside": "Outside corner"}
_STRAIGHT = Fraction(1, 2)


def compute(given, show):
    """The corner in degrees, and the setting, which may be irrational."""
    between, off, worked = _FOUND[given.found](given, show)
    _refuse_uncut(given, between)
    outside = "outside" in (given.corner, given.read) or bool(past_lines(given, "angle"))
    setting = half_corner(between)
    least, most = max(between - off[0], 0), min(between + off[1], 180)
    return Reckoning(
        answers={
            "setting": setting,
            "between_faces": between / 2,
            "corner": WHOLE - between if outside else between,
            "between": between,
            "least": half_corner(most),
            "most": half_corner(least),
            "way": _way(setting, outside),
        },
        working=(
            *worked,
            f"From square: 90 − {degrees_text(between)} ÷ 2 = {degrees_text(setting)}",
            f"The reading may be off: the corner is between {angle_text(least, 2)} and "
            f"{angle_text(most, 2)}",
        ),
        drawing=_drawing(between, setting, outside),
        cautions=SAW_CAUTIONS,
    )


def _refuse_uncut(given, between):
    """Refuse a corner that no miter is cut for."""
    if _LEAST <= between <= 180 - _STRAIGHT:
        return
    what = f"sharper than {_LEAST}°" if between < _LEAST else "as good as straight"
    raise Refusal(
        "impossible",
        f"A corner of {angle_text(between)} is {what}: no miter is cut for it.",
        "Check the readings, or join the pieces square.",
        field={"angle": "angle", "lengths": "across", "bevel": "square_over"}[given.found],
    )


def _way(setting, outside):
    name, where = ("Outside", "away from") if outside else ("Inside", "at")
    return (
        f"{name} corner: both pieces {angle_text(setting, 2)} from square, mirrored; the longer "
        f"side lies {where} the wall."
    )


def _drawing(between, setting, outside):
    corner, cut = angle_text(between), angle_text(setting)
    words = (
        f"Two pieces meet at {corner}. The joint halves the corner; both are cut {cut} from square."
    )
    return joint(words, between, corner, f"saw {cut}", outside=outside)


def _by_angle(given, _show):
    """(the angle between the pieces, how far it may be off below and above, lines of working)."""
    between = min(given.angle, WHOLE - given.angle)
    return between, (given.angle_off, given.angle_off), past_lines(given, "angle")


def _by_lengths(given, show):
    one, other, across = given.one_leg, given.other_leg, given.across
    a, b, c = (show.number(each) for each in (one, other, across))
    try:
        between = corner_of_three(one, other, across)
    except ValueError:
        raise _no_triangle(show, one, other, across) from None
    least, most = corner_within(one, other, across, given.length_off)
    square = show.pure((across**2 - (one - other) ** 2) / ((one + other) ** 2 - across**2))
    line = (
        f"tan² of half the corner: ({c}² − ({a} − {b})²) ÷ (({a} + {b})² − {c}²) = "
        f"{square}; the corner: 2 × arctan √{square}{angle_equals(between)}"
    )
    return between, (between - least, most - between), (line,)


def _no_triangle(show, one, other, across):
    limit = f"less than {show.text(one + other)}"
    if across < one + other:
        limit = f"more than {show.text(abs(one - other))}"
    return Refusal(
        "impossible",
        f"With legs of {show.text(one)} and {show.text(other)} the distance across is {limit}, and "
        f"{show.text(across)} was given.",
        "Measure the three lengths again, between the same three marks.",
        field="across",
    )


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
_READ = ("found", ("angle",))
_TAPED = ("found", ("lengths",))
_BEVEL = ("found", ("bevel",))
_MEASURED = ("found", ("lengths", "bevel"))
_FINDING = {"angle": "Protractor", "lengths": "Three lengths", "bevel": "Bevel on a board"}
_OPENS = {"closed": "Narrower than square", "open": "Wider than square"}

RECKONER = Reckoner(
    key="corner_setting",
    title="Saw setting for a corner",
    asks="How is the saw set for a corner that is not square?",
    words=(
        "corner not square, wall not 90, out of square corner, odd angle, angle finder, miter "
        "angle, miter saw setting, bisect, protractor, bevel gauge, half the angle, wall, "
        "corner, outside corner, inside corner, setting, degrees, by the diagonal"
    ),
    order=210,
    fields=(
        choice(
            "found",
            "Found by",
            _FINDING,
            help="A bevel set to the corner can be drawn on a board with a straight edge.",
        ),
        corner_field("angle", "Corner", least=_LEAST, default=None, shown_when=_READ),
        choice("read", "Read at an", _KINDS, shown_when=_READ),
        angle(
            "angle_off",
            "Protractor read to within",
            help="Half of its smallest division.",
            default="0.5",
            most="5",
            shown_when=_READ,
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
        choice("bevel_opens", "The bevel is", _OPENS, shown_when=_BEVEL),
        length(
            "length_off",
            "Lengths read to within",
            help="Half of the smallest mark that you read to.",
            default="1/32 in",
            metric="0.5 mm",
            most="1/2 in",
            shown_when=_MEASURED,
        ),
        choice("corner", "Corner of the room", _KINDS, shown_when=_MEASURED),
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
