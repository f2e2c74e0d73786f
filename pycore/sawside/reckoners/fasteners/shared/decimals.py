"""Small lengths in arithmetic, in decimals as screws, wire and bores are told."""

from sawside.wood.numbers import metric


def decimals(show, inches):
    """The exact length without its unit: "0.1093…"; millimeters where lengths are told in them."""
    return show.number(inches) if metric(show) else show.pure(inches, decimals=True)
