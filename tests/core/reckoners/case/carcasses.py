"""A case as the tests of that question fill it in, and what is told of its parts."""

CABINET = {"width": "36", "height": "30", "depth": "12", "thickness": "3/4"}
"""A record cabinet for an alcove, in boards of 3/4 for sums in the head."""


def sizes(said):
    """(count, length, width, thickness) of each part by its key, as told."""
    return {
        part["key"]: (
            part["count"],
            *(part[each]["text"] for each in ("length", "width", "thickness")),
        )
        for part in said["parts"]
    }


def about(said, key):
    """The sentences about a part."""
    return next(part["about"] for part in said["parts"] if part["key"] == key)
