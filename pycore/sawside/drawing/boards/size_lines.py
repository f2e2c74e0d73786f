"""A size on a part: in one line, or in two where it is too narrow for that."""


def lines_of(size, has_room):
    """["36″ × 15 1/2″"], or ["36″ ×", "15 1/2″"] where only these have room, or nothing."""
    if has_room(size):
        return [size]
    *sides, last = size.split(" × ")
    parts = [*(f"{side} ×" for side in sides), last]
    return parts if all(map(has_room, parts)) else []
