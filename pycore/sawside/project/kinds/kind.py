"""What a kind of entry says of itself: one file each, `reading.py`, `line.py` and `note.py`."""

from collections.abc import Callable, Mapping
from typing import NamedTuple


class Kind(NamedTuple):
    """`needs` and `may` are the checks of the keys that an entry has and may have.

    `name(text, field)` is a name of such an entry as it is kept, `title(entry, calls)` what it is
    called above its name; `calls` are the names in it. `texts(entry)` are (field or None, text) of
    all that may hold names, `with_texts(entry, change, fields)` the entry with these changed, by a
    function from text to text, in the `fields` that hold some. `with_own(entry, renamed)` calls
    tapes and materials by their new names, {"tapes": {old: new}, "materials": …}.
    `corrected(entry, **given)` is (the entry with what an act gives, what is said of it).
    `work(entry, settings, names, linked, like)` works it out; None where there is nothing to.
    """

    needs: Mapping[str, Callable]
    may: Mapping[str, Callable]
    name: Callable
    title: Callable
    texts: Callable
    with_texts: Callable
    with_own: Callable
    corrected: Callable
    work: Callable | None
