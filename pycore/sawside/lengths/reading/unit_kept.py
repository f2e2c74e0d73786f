"""A bare number keeps its meaning when what a bare number means is changed."""

from sawside.errors import Refusal
from sawside.lengths.reading.reader import read_length


def pinned(text, unit, other):
    """`text`, typed where a bare number was in `unit`, so written that it is the same in `other`.

    Raises whatever the reader refuses in `unit`.
    """
    if not text.strip():
        return text
    value = read_length(text, unit).value
    for written in (text, f"{text.strip()} {unit}"):
        try:
            if read_length(written, other).value == value:
                return written
        except Refusal:
            continue
    return f"{value} in"
