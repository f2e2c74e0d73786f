"""How is the saw set for a corner that was found with a bevel, a protractor or three lengths.

Two pieces of one width meet on the line that halves their corner, so each is cut half of it from
its own edge: from square that is 90 less half the corner.
"""

from fractions import Fraction

from sawside.drawing.choices.corners import CORNERS
from sawside.drawing.miters.corner import joint
from sawside.errors import Refusal
from sawside.geometry.corner import corner_of_slope, corner_of_three, corner_within
from sawside.geometry.miter import half_corner
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import angle, choice, length
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
            f"Miter: 90 − {degrees_text(between)} ÷ 2 = {degrees_text(setting)}",
            f"As closely as you measured, the corner is between {angle_text(least)} and "
            f"{angle_text(most)}",
        ),
        drawing=_drawing(between, setting, outside),
        cautions=SAW_CAUTIONS,
    )


def _refuse_uncut(given, between):
    """Refuse a corner that no miter is cut for."""
    if _LEAST <= between <= 180 - _STRAIGHT:
        return
    what = f"sharper than {_LEAST}°" if between < _LEAST else "nearly straight"
    raise Refusal(
        "impossible",
        f"A corner of {angle_text(between)} is {what}, so there’s no miter to cut.",
        "Check your measurements, or butt the pieces.",
        field={"angle": "angle", "lengths": "across", "bevel": "square_over"}[given.found],
    )


def _way(setting, outside):
    name, face = ("Outside", "away from") if outside else ("Inside", "against")
    return (
        f"{name} corner: cut both pieces at {angle_text(setting)}, mirror image; long points "
        f"{face} the wall."
    )


def _drawing(between, setting, outside):
    corner, cut = angle_text(between), angle_text(setting)
    words = f"Two pieces meet at {corner}. The joint halves the corner: cut both at {cut}."
    return joint(words, between, corner, f"miter {cut}", outside=outside)


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
        f"With legs of {show.text(one)} and {show.text(other)}, the distance across is {limit}, "
        f"and you gave {show.text(across)}.",
        "Measure all three lengths again, between the same three marks.",
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
_FINDING = {"angle": "Protractor", "lengths": "Three lengths", "bevel": "Bevel gauge on a board"}
_OPENS = {"closed": "Tighter than square", "open": "Wider than square"}

RECKONER = Reckoner(
    key="corner_setting",
    title="Miter angle for a corner",
    asks="What miter angle do I need for a corner that isn’t 90?",
    words=(
        "corner not square, wall not 90, out of square corner, odd angle, angle finder, miter "
        "angle, miter saw setting, bisect, protractor, bevel gauge, half the angle, wall, "
        "corner, outside corner, inside corner, setting, degrees, by the diagonal"
    ),
    order=210,
    job="miters and frames",
    picture={"wood": "M20 6v11L9 36l-8-5zM20 6v11l11 19 8-5z", "chalk": "M20 2v21"},
    basic=("found", "read", "bevel_opens", "corner"),
    fields=(
        choice(
            "found",
            "Measured with",
            _FINDING,
            help="No protractor? Set a bevel gauge to the corner and trace it on a straight board.",
        ),
        corner_field("angle", "Corner", least=_LEAST, default=None, shown_when=_READ),
        choice("read", "Corner type", _KINDS, pictures=CORNERS, shown_when=_READ),
        angle(
            "angle_off",
            "Good to within",
            help="Half the protractor’s smallest division.",
            default="0.5",
            most="5",
            shown_when=_READ,
        ),
        length(
            "one_leg",
            "First leg",
            help="From the corner to a mark on the wall, as far out as you can reach.",
            least="1 in",
            shown_when=_TAPED,
        ),
        length(
            "other_leg",
            "Second leg",
            help="On an outside corner, extend both wall lines and measure along those.",
            least="1 in",
            shown_when=_TAPED,
        ),
        length("across", "Mark to mark", least="1/8 in", shown_when=_TAPED),
        length(
            "along",
            "Along the board edge",
            help="From where your line starts at the edge.",
            least="1 in",
            shown_when=_BEVEL,
        ),
        length(
            "square_over",
            "Square over to the line",
            help="From that spot on the edge to your line.",
            least="1/64 in",
            shown_when=_BEVEL,
        ),
        choice("bevel_opens", "Bevel", _OPENS, shown_when=_BEVEL),
        choice("corner", "Corner type", _KINDS, pictures=CORNERS, shown_when=_MEASURED),
        length(
            "length_off",
            "Measured to within",
            help="Half the smallest mark you read to.",
            default="1/32 in",
            metric="0.5 mm",
            most="1/2 in",
            shown_when=_MEASURED,
        ),
    ),
    answers=(
        Answer("setting", "Miter angle", "angle", sets="turned"),
        Answer("between_faces", "Angle between edge and cut", "angle"),
        Answer("corner", "Corner, from the room", "angle"),
        Answer("between", "Angle between the pieces", "angle"),
        Answer("least", "Lowest it could be", "angle"),
        Answer("most", "Highest it could be", "angle"),
        Answer("way", "At the saw", "text"),
    ),
    source=(
        "The joint of two pieces of one width halves their corner: plane geometry. Three lengths: "
        "law of cosines. Taking half the smallest division as the uncertainty is shop practice."
    ),
    compute=compute,
    verdict="Miter {setting}, both pieces",
    example={
        "found": "lengths",
        "one_leg": "24",
        "other_leg": "18",
        "across": "30 1/8",
        "length_off": "1/32",
        "corner": "inside",
    },
)
