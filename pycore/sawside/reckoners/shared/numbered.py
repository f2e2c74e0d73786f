"""Values that are told by their number."""


def numbered(name, values):
    """An answer of the kind "lengths": Shelf 1, Shelf 2, each with its value."""
    return [(f"{name} {number}", value) for number, value in enumerate(values, 1)]
