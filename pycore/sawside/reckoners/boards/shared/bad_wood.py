"""Stretches of bad wood as they are typed: "12 to 15, 40 to 41 1/2", from one end."""

from sawside.errors import Refusal
from sawside.lengths.reading.reader import read_length
from sawside.lengths.real import Real
from sawside.reckoners.boards.shared.bad_stretches import stretches_in


def bad_stretches(text, show, row):
    """((from, to), …) in exact inches; refusals name the row (from 0) of the sticks on hand."""
    return tuple(_stretch(ends, show, row) for ends in stretches_in(text))


def _stretch(ends, show, row):
    part = " to ".join(ends)
    if len(ends) != 2:
        raise _refusal("range", f"“{part}” isn’t a stretch from one place to another.", row)
    start, end = (_length(each, show, row) for each in ends)
    if not 0 <= start < end:
        raise _refusal("range", f"“{part}” doesn’t end farther along than it starts.", row)
    return start, end


def _length(text, show, row):
    try:
        length = read_length(text, show.settings.unit).value
    except Refusal as refusal:
        raise _refusal(refusal.kind, f"“{text.strip()}”: {refusal.message}", row) from None
    return show.mark(length) if isinstance(length, Real) else length


def _refusal(kind, message, row):
    return Refusal(
        kind,
        f"Stick {row + 1}: {message}",
        "Write each stretch like 12 to 15, with commas between.",
        field="on_hand",
        row=row,
        part="bad",
    )
