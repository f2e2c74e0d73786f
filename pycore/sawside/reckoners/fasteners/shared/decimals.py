"""Small lengths in arithmetic, in decimals as screws, wire and bores are told."""


def decimals(show, inches):
    """The exact length without its unit: "0.1093…"; millimeters where lengths are told in them."""
    if show.settings.display == "mm":
        return show.number(inches)
    return show.pure(inches, decimals=True)
