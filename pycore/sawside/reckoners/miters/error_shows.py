"""How wide do the joints of a mitered ring stand open when a setting or a length is a little off.

A cut that is less than its setting touches at the heel (inside) and opens at the toe (outside);
one that is more, the other way round. A wrong length opens a joint evenly.
"""

from sawside.drawing.miters.open_joint import open_joint
from sawside.errors import Refusal
from sawside.geometry.ring import face_length, last_joint, parallel_gap, true_setting, wedge
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, angle, choice, length
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.reckoners.miters.shared.ring_fields import (
    CORNERS,
    feeler_text,
    setting_worked,
    width_field,
)

_PAPER = "To picture it: a sheet of paper is about 0.004″ (0.1 mm): shop practice."


def compute(given, show):
    """Gaps in inches on fine marks, mostly irrational, and the closing angle in degrees."""
    if given.corners != 4 and given.other_side is not None:
        raise Refusal(
            "conflict",
            f"Only a frame with four corners can have two lengths of sides, and this one has "
            f"{given.corners}.",
            "Leave Other side, inside blank.",
            field="other_side",
        )
    return (_setting_off if given.error == "setting" else _length_off)(given, show)


def _setting_off(given, show):
    cut, small = _cut(given), given.angle_way == "small"
    gap = wedge(given.width, cut, given.angle_off)
    closing = 2 * given.corners * given.angle_off
    sides = [given.side, given.other_side or given.side] * given.corners
    heel, toe = last_joint(sides[: given.corners], given.width, cut)
    opens = f"At the {'toe (outside)' if small else 'heel (inside)'}, with each corner held true."
    return Reckoning(
        answers={
            **_gap_answers(gap, show, opens),
            "closing": closing,
            "last_heel": on_fine_marks(heel, show),
            "last_toe": on_fine_marks(toe, show),
        },
        working=_setting_worked(given, show, cut, gap, closing, (heel, toe)),
        drawing=_wedge_drawing(given, fine_text(gap, show)),
    )


def _cut(given):
    """The setting that was cut, in degrees."""
    true, off = true_setting(given.corners), given.angle_off
    cut = true - off if given.angle_way == "small" else true + off
    if not 0 < cut < 90:
        raise Refusal(
            "impossible",
            f"The miter is {angle_text(true)}; {angle_text(off)} off, there’s no miter left.",
            "Use a smaller error.",
            field="angle_off",
        )
    return cut


def _gap_answers(gap, show, opens):
    return {"gap": on_fine_marks(gap, show), "feeler": feeler_text(gap), "opens": opens}


def _setting_worked(given, show, cut, gap, closing, last):
    small, true = given.angle_way == "small", degrees_text(true_setting(given.corners))
    off, turned = degrees_text(given.angle_off), degrees_text(cut)
    face = show.number(face_length(given.width, cut))
    heel, toe = (show.number(each) for each in last)
    ends = "the last opens" if small else "the last overlaps, so one end has to open,"
    return (
        setting_worked(given.corners),
        f"Cut at {true} {'−' if small else '+'} {off} = {turned}°",
        f"Face of the cut: {show.number(given.width)} ÷ cos {turned}° = {face}",
        f"Two faces, each {off}° off: 2 × {face} × sin {off}° = {show.number(gap)}",
        f"The frame closes {'short' if small else 'over'} by {2 * given.corners} × {off}°"
        f"{angle_equals(closing)}",
        f"With the other joints pulled tight, {ends} {heel} at the heel and {toe} at the toe",
        _PAPER,
    )


def _wedge_drawing(given, text):
    closed, open_, gaps, texts = "heel", "toe", (0.04, 0.5), ("closed", text)
    if given.angle_way != "small":
        closed, open_, gaps, texts = open_, closed, gaps[::-1], texts[::-1]
    words = (
        f"Two pieces held at their true corner. The joint is closed at the {closed} and open "
        f"{text} at the {open_}. The gap is exaggerated."
    )
    return open_joint(words, float(true_setting(given.corners)), *gaps, texts)


def _length_off(given, show):
    true, along = true_setting(given.corners), given.length_off
    gap = parallel_gap(along, true)
    text, turned = fine_text(gap, show), degrees_text(true)
    where = "the short piece"
    if given.length_way != "short":
        where = "the piece across from the long one"
    if given.length_way != "short" and given.corners != 4:
        where = "one of the other pieces"
    opens = f"Evenly from heel to toe, at one end of {where}, with all angles true."
    words = f"Two pieces at their true corner, open evenly: {text} from heel to toe, exaggerated."
    return Reckoning(
        answers=_gap_answers(gap, show, opens),
        working=(
            setting_worked(given.corners),
            f"Square to the faces: {show.number(along)} × cos {turned}° = {show.number(gap)}",
            _PAPER,
        ),
        drawing=open_joint(words, float(nearby(true)), 0.3, 0.3, (text, text)),
    )


_SETTING = ("error", ("setting",))
_LENGTH = ("error", ("length",))
_WAYS = {"small": "Too low (closer to square)", "large": "Too high"}

RECKONER = Reckoner(
    key="error_shows",
    title="What an error does to a joint",
    asks="How big a gap do I get if the saw or a length is a little off?",
    words=(
        "miter gap, open miter, open joint, gap, how close, error, tolerance, accuracy, heel, "
        "toe, feeler, closing, off"
    ),
    order=230,
    job="miters and frames",
    picture={"wood": "M3 6h33L22 17H3zM36 6v31H25V20z", "chalk": "M11 32l10-10m-6 0h6v6"},
    fields=(
        choice("error", "What’s off", {"setting": "Miter angle", "length": "Length of one piece"}),
        CORNERS,
        width_field(shown_when=_SETTING),
        angle(
            "angle_off",
            "Angle off by",
            help="Degrees, at each cut.",
            default="0.5",
            least="0.01",
            most="5",
            shown_when=_SETTING,
        ),
        choice("angle_way", "Saw set", _WAYS, shown_when=_SETTING),
        length(
            "side",
            "Side, inside",
            help="Inside edge of a piece cut right.",
            least="1/8 in",
            shown_when=_SETTING,
        ),
        length(
            "other_side",
            "Other side, inside",
            help="Inside edge of the next piece, for a rectangle.",
            least="1/8 in",
            **blank("All sides match."),
            shown_when=_SETTING,
        ),
        length(
            "length_off",
            "Length off by",
            help="On one piece only.",
            default="1/32 in",
            metric="0.5 mm",
            least="0.001 in",
            most="6 in",
            shown_when=_LENGTH,
        ),
        choice(
            "length_way", "Piece", {"short": "Too short", "long": "Too long"}, shown_when=_LENGTH
        ),
    ),
    answers=(
        Answer("gap", "Gap at each joint", must="agree"),
        Answer("feeler", "Feeler gauge that fits", "text"),
        Answer("opens", "Where it opens", "text"),
        Answer("closing", "Total error around the frame", "angle"),
        Answer("last_heel", "Last joint, others tight: heel", must="agree"),
        Answer("last_toe", "Last joint, others tight: toe", must="agree"),
    ),
    source="Plane trigonometry. Heel for the inside end of a miter and toe for the outside one: "
    "shop practice.",
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
