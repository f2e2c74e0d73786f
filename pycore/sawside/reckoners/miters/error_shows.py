"""How wide do the joints of a mitered ring stand open when a setting or a length is a little off.

A cut that is less than its setting touches at the heel (inside) and opens at the toe (outside);
one that is more, the other way round. A wrong length opens a joint evenly.
"""

from sawside.drawing.miters.open_joint import open_joint
from sawside.errors import Refusal
from sawside.geometry.ring import face_length, last_joint, parallel_gap, true_setting, wedge
from sawside.lengths.display import decimal_text
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, angle, choice, count, length

_PAPER = "For the eye: a sheet of paper is about 0.004″ (0.1 mm): common practice, no source."


def compute(given, show):
    """Gaps in inches on fine marks, mostly irrational, and the closing angle in degrees."""
    if given.corners != 4 and given.other_side is not None:
        raise Refusal(
            "conflict",
            f"Only a ring of four corners has two lengths of sides, and this one has "
            f"{given.corners}.",
            "Leave Other side blank.",
            field="other_side",
        )
    return (_setting_off if given.error == "setting" else _length_off)(given, show)


def _setting_off(given, show):
    true, off = true_setting(given.corners), given.angle_off
    small = given.angle_way == "small"
    cut = true - off if small else true + off
    if not 0 < cut < 90:
        raise Refusal(
            "impossible",
            f"The setting is {angle_text(true)}; {angle_text(off)} from it nothing is mitered.",
            "Give a smaller error.",
            field="angle_off",
        )
    gap = wedge(given.width, cut, off)
    closing = 2 * given.corners * off
    sides = [given.side, given.other_side or given.side] * given.corners
    heel, toe = last_joint(sides[: given.corners], given.width, cut)
    place, other = ("toe", "heel") if small else ("heel", "toe")
    texts = ("closed", fine_text(gap, show))
    texts = texts if small else texts[::-1]
    words = (
        f"Two pieces held at their true corner. The joint is closed at the {other} and open "
        f"{fine_text(gap, show)} at the {place}. The gap is drawn much wider."
    )
    width, error = show.number(given.width), degrees_text(off)
    face = show.number(face_length(given.width, cut))
    fact = "open" if small else "overlap, so that one of them has to open,"
    return Reckoning(
        answers={
            "gap": on_fine_marks(gap, show),
            "feeler": feeler_text(gap),
            "opens": f"At the {place} ({'outside' if small else 'inside'}), when each corner is "
            "held true.",
            "closing": closing,
            "last_heel": on_fine_marks(heel, show),
            "last_toe": on_fine_marks(toe, show),
        },
        working=(
            f"True setting: 180 ÷ {given.corners} = {degrees_text(true)}°",
            f"Cut at {degrees_text(true)} {'−' if small else '+'} {error} = {degrees_text(cut)}°",
            f"Face of the cut: {width} ÷ cos {degrees_text(cut)}° = {face}",
            f"Two faces, each {error}° off: 2 × {face} × sin {error}° = {show.number(gap)}",
            f"The ring ends {'short' if small else 'over'} by {2 * given.corners} × {error}°"
            f"{angle_equals(closing)}",
            f"With all joints but the last pulled tight, its ends {fact} {show.number(heel)} at "
            f"the heel and {show.number(toe)} at the toe",
            _PAPER,
        ),
        drawing=open_joint(
            words, float(true), 0.04 if small else 0.5, 0.5 if small else 0.04, texts
        ),
    )


def _length_off(given, show):
    true, along = true_setting(given.corners), given.length_off
    gap = parallel_gap(along, true)
    text = fine_text(gap, show)
    short = given.length_way == "short"
    where = "the piece that is short" if short else "the piece across from the long one"
    if given.corners != 4:
        where = "the piece that is short" if short else "one of the other pieces"
    words = f"Two pieces at their true corner, open evenly: {text} from heel to toe, drawn wider."
    return Reckoning(
        answers={
            "gap": on_fine_marks(gap, show),
            "feeler": feeler_text(gap),
            "opens": f"Evenly from heel to toe, at one end of {where}, all angles held true.",
        },
        working=(
            f"True setting: 180 ÷ {given.corners} = {degrees_text(true)}°",
            f"Square to the faces: {show.number(along)} × cos {degrees_text(true)}° = "
            f"{show.number(gap)}",
            _PAPER,
        ),
        drawing=open_joint(words, float(nearby(true)), 0.3, 0.3, (text, text)),
    )


def feeler_text(gap):
    """A small gap (exact inches) as feelers are sold: thousandths of an inch, hundredths of mm."""
    thousandths = decimal_text(gap, 3).rstrip("…")
    return f"{thousandths}″, {decimal_text(gap * (1 / INCHES_PER['mm']), 2).rstrip('…')} mm"


_SETTING = ("error", ("setting",))
_LENGTH = ("error", ("length",))

RECKONER = Reckoner(
    key="error_shows",
    title="How far does an error show",
    asks="How wide do joints gape when a setting or a length is a little off?",
    words=(
        "gap, error, open joint, miter gap, off, feeler, tolerance, closing, heel, toe, accuracy, "
        "how close"
    ),
    order=230,
    fields=(
        choice("error", "What is off", {"setting": "Saw setting", "length": "Length of one piece"}),
        count("corners", "Corners", help="Of the whole ring.", default="4", least="3", most="24"),
        length(
            "width",
            "Stock width",
            help="Across the face of the miter.",
            least="1/64 in",
            most="4 ft",
            shown_when=_SETTING,
        ),
        angle(
            "angle_off",
            "Setting off by",
            help="Each cut, in degrees.",
            default="0.5",
            least="0.01",
            most="5",
            shown_when=_SETTING,
        ),
        choice(
            "angle_way",
            "The saw is set",
            {"small": "Too small, nearer square", "large": "Too large"},
            shown_when=_SETTING,
        ),
        length(
            "side",
            "Side, on the inside",
            help="The inner edge of a piece, cut right.",
            least="1/8 in",
            shown_when=_SETTING,
        ),
        length(
            "other_side",
            "Other side, on the inside",
            help="The neighbor's inner edge, where four corners have two lengths.",
            least="1/8 in",
            may_be_blank=True,
            blank_means="All sides are alike.",
            shown_when=_SETTING,
        ),
        length(
            "length_off",
            "Length off by",
            help="One piece alone.",
            default="1/32 in",
            metric="0.5 mm",
            least="0.001 in",
            most="6 in",
            shown_when=_LENGTH,
        ),
        choice(
            "length_way",
            "The piece is",
            {"short": "Too short", "long": "Too long"},
            shown_when=_LENGTH,
        ),
    ),
    answers=(
        Answer("gap", "Gap at each joint", must="agree"),
        Answer("feeler", "Thickness of a feeler that fits", "text"),
        Answer("opens", "Where it opens", "text"),
        Answer("closing", "The whole ring closes wrong by", "angle"),
        Answer("last_heel", "Last joint, all others tight: heel", must="agree"),
        Answer("last_toe", "Last joint, all others tight: toe", must="agree"),
    ),
    source="Plane trigonometry. Heel for the inner end of a miter and toe for the outer one: "
    "common practice, no source.",
    compute=compute,
    example={
        "error": "setting",
        "corners": "4",
        "width": "2 1/4",
        "angle_off": "0.5",
        "angle_way": "small",
        "side": "13 7/8",
        "other_side": "20 1/8",
    },
)
