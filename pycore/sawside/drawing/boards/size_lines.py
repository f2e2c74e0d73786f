"""A size or a name on a part: in one line, or in more where it is too narrow for that."""


def lines_of(size, has_room):
    """["36″ × 15 1/2″"], or ["36″ ×", "15 1/2″"] where only these have room, or nothing."""
    if has_room(size):
        return [size]
    *sides, last = size.split(" × ")
    parts = [*(f"{side} ×" for side in sides), last]
    return parts if all(map(has_room, parts)) else []


def wrapped(words, has_room):
    """Words in as few lines as they go into, one after another; [] where one has no room."""
    lines = []
    for word in words:
        longer = f"{lines[-1]} {word}" if lines else ""
        if longer and has_room(longer):
            lines[-1] = longer
        elif has_room(word):
            lines.append(word)
        else:
            return []
    return lines
