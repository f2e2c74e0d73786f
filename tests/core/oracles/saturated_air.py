"""Dew points by another formula: that of ASHRAE, turned round by halving. Shares no code.

ASHRAE Handbook, Fundamentals (2017), chapter 1, equation 6 (Hyland and Wexler 1983): the pressure
of saturated vapor over water, 0 to 200 °C; coefficients read in two manuals of instruments.
"""

import math

_C = (-0.58002206e4, 0.13914993e1, -0.48640239e-1, 0.41764768e-4, -0.14452093e-7, 6.5459673)


def saturated(celsius):
    """The pressure of saturated vapor in pascals."""
    k = celsius + 273.15
    c = _C
    return math.exp(c[0] / k + c[1] + c[2] * k + c[3] * k**2 + c[4] * k**3 + c[5] * math.log(k))


def dew_point_by_halving(celsius, humidity):
    """The temperature in °C at which the vapor of this air, `humidity` in percent, saturates it."""
    vapor = saturated(celsius) * humidity / 100
    low, high = -60.0, 80.0
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if saturated(middle) < vapor else (low, middle)
    return low
