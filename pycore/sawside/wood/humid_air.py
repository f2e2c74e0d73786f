"""The dew point of air, by the Magnus formula.

The pressure of water vapor that fills air of t degrees Celsius is in proportion to
exp(17.625 t / (243.04 + t)), with the constants of O. A. Alduchov and R. E. Eskridge, Improved
Magnus form approximation of saturation vapor pressure, Journal of Applied Meteorology 35 (1996),
for −40 to 50 °C over water. Turned round, with g = ln(h) + 17.625 t / (243.04 + t), the dew point
is 243.04 g / (17.625 − g).
"""

from fractions import Fraction

A, B = Fraction("17.625"), Fraction("243.04")
"""The constants, the second in degrees Celsius."""

_BITS = 96
_ONE = 1 << _BITS


def dew_point(celsius, humidity):
    """The temperature in degrees Celsius at which this air drops its water.

    `celsius` from −40 to 50; `humidity` relative, in percent, from 1 to 100. A fraction within
    a billionth of a degree of the formula, which itself is good to about a tenth.
    """
    t = Fraction(celsius)
    g = logarithm(Fraction(humidity) / 100) + A * t / (B + t)
    return B * g / (A - g)


def logarithm(value):
    """The natural logarithm of a fraction from 1/100 up to 1 as one, within 2**-80.

    ln x = −2 artanh y with y = (1 − x) / (1 + x), its series summed in integers.
    """
    y = (1 - value) / (1 + value)
    power = y.numerator * _ONE // y.denominator
    square = power * power >> _BITS
    total, odd = 0, 1
    while power:
        total += power // odd
        power = power * square >> _BITS
        odd += 2
    return Fraction(-2 * total, _ONE)
