"""The names of a project: what a text may call, and which entry and answer is meant by it.

An entry is called by its name; that is a reading's length, or the first answer of a line. Another
answer is called `Top rail: Short side`, one of a list of answers `Shelves: Marks 3`.
"""

import re
from functools import lru_cache
from typing import NamedTuple

from sawside.lengths.reading.names import BARE
from sawside.lengths.reading.uses import goes_on, uses

_WORD = re.compile(r"[^\W\d_]\w*")
_SIGN_INSIDE = re.compile(r" (?:x|of)(?![a-z])", re.ASCII | re.IGNORECASE)
_MAY_CALL = re.compile(r"\[|[^\W\d_]")
"""A text without either calls nothing."""


class Target(NamedTuple):
    """An entry, and the label of one of its answers ("" for the first)."""

    entry: str
    answer: str


class Vocabulary:
    """The names of some entries, given as (id, name)."""

    def __init__(self, named):
        self._ids, self._bare = {}, {}
        for identity, name in named:
            self._ids[name.casefold()] = identity
            if BARE.fullmatch(name):
                first = _WORD.match(name)[0].casefold()
                self._bare.setdefault(first, []).append(name)
        for names in self._bare.values():
            names.sort(key=len, reverse=True)

    def longest(self, text, at):
        """Where the longest name that begins at `at` ends, with the label behind it; or None."""
        word = _WORD.match(text, at)
        if word is None:
            return None
        for name in self._bare.get(word[0].casefold(), ()):
            end = at + len(name)
            alike = text[at:end].casefold() == name.casefold()
            if alike and not text[end : end + 1].isalnum() and not goes_on(text, end):
                return end
        return None

    def target(self, written):
        """What is meant by a name as it is written; None when nothing is called so."""
        written = written.casefold()
        identity = self._ids.get(written)
        if identity is not None:
            return Target(identity, "")
        name, colon, label = written.rpartition(":")
        identity = self._ids.get(name.strip()) if colon else None
        return None if identity is None else Target(identity, label.strip())

    def begins(self, written):
        """Whether some name begins with these letters."""
        return any(name.startswith(written.casefold()) for name in self._ids)

    def uses(self, text):
        """Every `Use` of a name in a text."""
        return uses(text, self.longest) if _MAY_CALL.search(text) else ()


@lru_cache(maxsize=8)
def vocabulary_of(named):
    """The `Vocabulary` of ((id, name), …); the same object while the names are the same."""
    return Vocabulary(named)


@lru_cache(maxsize=256)
def longest_of(names):
    """`Vocabulary.longest` of some names alone, a tuple."""
    return Vocabulary((name, name) for name in names).longest


def longest_beside(text, lines, longest):
    """What `uses` asks for in a text that may also call `lines` of a tally, in small letters.

    `longest` tells it of the names of a project. Those of a tally are found by their letters alone,
    but for the ones that have a sign in them, as "top of case".
    """
    if not _SIGN_INSIDE.search(text):
        return longest
    of_lines = longest_of(tuple(each for each in lines if _SIGN_INSIDE.search(each)))
    return lambda text, at: max(of_lines(text, at) or 0, longest(text, at) or 0) or None


def uses_beside(text, lines, longest):
    """Every `Use` in a text that may also call `lines` of a tally; see `longest_beside`."""
    if not _MAY_CALL.search(text):
        return ()
    return uses(text, longest_beside(text, lines, longest))
