"""A length in the cells of a table: as it is written in the shop, exactly, and in decimals."""

from sawside.lengths.display import decimal_text, plain_text
from sawside.lengths.real import Real
from sawside.lengths.units import INCHES_PER


def columns(name):
    """The names of the columns of one measure."""
    return (name, f"{name} exact", f"{name} in", f"{name} mm")


def cells(value, show):
    """The cells of a length in exact inches (blank for None): its mark, itself, in and mm.

    The second reads back to the very length; it is blank where no fraction tells it.
    """
    if value is None:
        return ("", "", "", "")
    rounded = show.rounded(value)
    exact = rounded.exact
    return (
        plain_text(rounded, show.settings.display),
        "" if isinstance(exact, Real) else f"{exact} in",
        decimal_text(exact).rstrip("…"),
        decimal_text(exact * (1 / INCHES_PER["mm"]), 4).rstrip("…"),
    )


def typed(cells_, name):
    """What is to be read of a row for a measure: the exact cell, or the one from the shop."""
    return (cells_[f"{name} exact"] or cells_[name]).strip()
