"""How large a part of a sheet may be that is cut further after the first cuts."""

from fractions import Fraction

from sawside.settings.set_length import SetLength

_SIDE = {"default": "", "least": "6 in", "most": "20 ft"}
HANDLED = (
    SetLength(
        "part_length",
        "Largest part, long side",
        "What you can handle after the first cuts.",
        **_SIDE,
    ),
    SetLength("part_width", "Largest part, short side", "", **_SIDE),
)
"""Any where both are blank."""

ANY = Fraction(10_000)
"""Inches, longer than every sheet."""


def largest_part(long, short):
    """The largest part that is handled, (long side, short side) in exact inches, of two sides that
    may be None; None for any."""
    if long is None and short is None:
        return None
    long = ANY if long is None else long
    return long, long if short is None else short
