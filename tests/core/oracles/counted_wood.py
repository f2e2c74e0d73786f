"""Wood counted by hand: board feet in little blocks, money in cents, stretches in ticks.

Shares no code with the questions.
"""

from fractions import Fraction

QUARTERS = {
    f"thickness_{over}_{under}": Fraction(over, under)
    for over, under in ((3, 8), (1, 2), (5, 8), (3, 4), (4, 4), (5, 4), (6, 4), (7, 4), (8, 4))
} | {f"thickness_{over}_4": Fraction(over, 4) for over in (10, 12, 14, 16)}
"""Rough thickness by the value of its choice."""


def surface(width, length):
    """The surface measure: square feet over whole feet of length, to the nearest whole, halves
    up."""
    feet = 0
    while (feet + 1) * 12 <= length:
        feet += 1
    twelfths = Fraction(width) * feet
    whole = 0
    while twelfths - 12 * whole >= 6:
        whole += 1
    return whole


def cost(price, per, *, counted, width, length, surface_feet):
    """What one costs; `counted` are the board feet by volume."""
    feet = Fraction(length) / 12
    return (
        price
        * {
            "piece": 1,
            "foot": feet,
            "meter": feet * Fraction("0.3048"),
            "board_foot": counted,
            "surface": surface_feet,
            "square_foot": feet * width / 12,
            "square_meter": feet * width / 12 * Fraction("0.09290304"),
        }[per]
    )


def longest_clear(length, bad, parts=64):
    """The longest run of ticks of 1/`parts` that is in no bad stretch."""
    ticks = [True] * int(length * parts)
    for start, end in bad:
        for tick in range(int(start * parts), int(end * parts)):
            ticks[tick] = False
    best = run = 0
    for clear in ticks:
        run = run + 1 if clear else 0
        best = max(best, run)
    return Fraction(best, parts)
