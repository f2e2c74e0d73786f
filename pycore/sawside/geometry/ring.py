"""A ring of mitered pieces whose cuts or lengths are a little off: how wide its joints stand open.

Toe is the outer end of a joint, heel the inner one. Measures are exact inches, angles degrees;
the formulas are plane trigonometry.
"""

from fractions import Fraction

from sawside.geometry.angles import arctangent, cosine, sine, tangent
from sawside.lengths.real import sqrt


def true_setting(corners):
    """The setting from square at which a ring of so many equal corners closes."""
    return Fraction(180, corners)


def face_length(width, setting):
    """How long the face of a cut is, from heel to toe."""
    return width / cosine(setting)


def wedge(width, setting, off):
    """The wide end of a joint that is held at its true corner, both cuts `off` from the setting.

    The two faces touch at one end and stand twice `off` apart: 2 x face x sin off. `setting` is
    the one that was cut.
    """
    return 2 * face_length(width, setting) * sine(off)


def wedge_off(width, true, open_, *, at_toe):
    """How far each of the two cuts is off `true` where the joint stands `open_`: the reverse.

    Open at the toe the cuts are too small. From `wedge`: tan off = open cos true / (2 width -
    open sin true), with plus for minus where it is open at the heel.
    """
    way = -1 if at_toe else 1
    return arctangent(open_ * cosine(true) / (2 * width + way * open_ * sine(true)))


def parallel_gap(along, setting):
    """The gap, square to the faces, where a piece is `along` too short and all angles are right."""
    return along * cosine(setting)


def last_joint(sides, width, setting):
    """(heel, toe): how far the two ends of the ring are apart when all other joints are tight.

    `sides` are the inner edges in order. Each joint turns the next piece by twice the setting that
    was cut, so the places are sums of the sides turned by multiples of that.
    """
    turn = 2 * setting
    x = sum((side * cosine(number * turn) for number, side in enumerate(sides)), Fraction(0))
    y = sum((side * sine(number * turn) for number, side in enumerate(sides)), Fraction(0))
    out, last = width * tangent(setting), (len(sides) - 1) * turn
    toe_x = x + out * cosine(last) + width * sine(last) + out
    toe_y = y + out * sine(last) - width * cosine(last) + width
    return _far(x, y), _far(toe_x, toe_y)


def _far(x, y):
    return sqrt(x * x + y * y)
