"""What comes of stepping a rounded length off again and again with one block or dividers."""

from sawside.lengths.fine import fine_text
from sawside.lengths.real import sign
from sawside.reckoners.declaration import Answer

STEPPING = Answer("stepping", "Stepping it off", "text")


def stepping(show, each, times):
    """The warning, with how far `times` steps of the mark of `each` (inches, exact) go wrong.

    Every step adds the same small error, so it grows from one to the next.
    """
    text, error = show.text(each), times * (show.mark(each) - each)
    way = sign(error)
    if way == 0:
        said = f"{text} is exact, but any error in the block adds up at every step"
    else:
        over = "over" if way > 0 else "short"
        said = f"{text} stepped off {times} times ends {fine_text(abs(error), show)} {over}"
    return f"{said}. Mark each one from the same end instead."
