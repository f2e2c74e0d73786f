"""What is known of entries already seen, so that a change works out only what depends on it.

It holds nothing that could not be made again from the entry itself: with or without it the same
message has the same answer.
"""

from sawside.project.kinds.entries import read_entry

MOST = 12_000
_seen = {}


class Known:
    """An entry that was checked, and what was worked out of it (see `worked`)."""

    __slots__ = ("calls", "entry", "linked", "results", "vocabulary")

    def __init__(self, entry):
        self.entry = entry
        self.vocabulary = self.calls = None
        self.linked = ()
        self.results = []


def recalled(data, place):
    """A checked copy of an entry; the one that was checked before, when it is the same."""
    known = _seen.get(data.get("id")) if isinstance(data, dict) and _has_id(data) else None
    if known is not None and known.entry == data and _same_order(known.entry, data):
        return known.entry
    return read_entry(data, place)


def known_of(entry):
    """The `Known` of a checked entry."""
    known = _seen.get(entry["id"])
    if known is not None and known.entry is entry:
        return known
    if known is not None and known.entry == entry and _same_order(known.entry, entry):
        return known
    if len(_seen) >= MOST:
        _seen.clear()
    known = _seen[entry["id"]] = Known(entry)
    return known


def _has_id(data):
    return isinstance(data.get("id"), str)


def _same_order(one, other):
    """Whether equal data would be written in the same order."""
    if isinstance(one, dict):
        return list(one) == list(other) and all(
            _same_order(each, other[key])
            for key, each in one.items()
            if isinstance(each, (dict, list))
        )
    return all(
        _same_order(a, b) for a, b in zip(one, other, strict=True) if isinstance(a, (dict, list))
    )


def forget():
    """Forget everything: what is asked next is worked out from its text alone."""
    _seen.clear()
