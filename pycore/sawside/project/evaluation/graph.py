"""Which entry uses which, and an order in which each comes after what it uses."""

from graphlib import CycleError, TopologicalSorter

from sawside.project.evaluation.vocabulary import vocabulary_of
from sawside.project.kinds.entries import kind_of
from sawside.project.schema.cache import known_of


class Graph:
    """The names of a document, and its entries that have a value: `known` has each by its id.

    `links` are the `Links` between them; the same object while no text has other names than before.
    """

    def __init__(self, document):
        entries = [entry for entry in document["entries"] if kind_of(entry).work]
        self.vocabulary = vocabulary_of(tuple((entry["id"], entry["name"]) for entry in entries))
        self.known = {entry["id"]: _looked_up(entry, self.vocabulary) for entry in entries}
        self.links = _links(self.vocabulary, self.known)


class Links:
    """Which entry uses which, by their ids.

    `uses` and `used_by` are direct, `order` has those that can be worked out, `cycle` is a chain
    that goes round (the first again at its end), or ().
    """

    def __init__(self, known):
        self.uses = {identity: [*_used(each)] for identity, each in known.items()}
        self.used_by = {}
        for identity, used in self.uses.items():
            for each in used:
                self.used_by.setdefault(each, []).append(identity)
        self.cycle = ()
        sorter = TopologicalSorter(self.uses)
        try:
            sorter.prepare()
        except CycleError as cycle:
            self.cycle = tuple(cycle.args[1])
        self.order = []
        while ready := sorter.get_ready():
            self.order += ready
            sorter.done(*ready)

    def after(self, identity):
        """The ids of all entries that use one, directly or through others."""
        found = {identity}
        for each in self.order:
            if any(used in found for used in self.uses[each]):
                found.add(each)
        return found - {identity}


def _used(known):
    """The ids of what an entry uses, each once."""
    return dict.fromkeys(call.target.entry for call in known.calls.values() if call.target)


_last = [None, None, None]


def _links(vocabulary, known):
    """The `Links` of some entries; those of last time while names and calls are the same."""
    calls = [each.calls for each in known.values()]
    if _last[0] is not vocabulary or _last[1] != calls:
        _last[:] = vocabulary, calls, Links(known)
    return _last[2]


class Call:
    """A name that an entry uses: what is meant by it, and the field and place where it stands."""

    __slots__ = ("at", "field", "target")

    def __init__(self, target, field, at):
        self.target = target
        self.field = field
        self.at = at


def _looked_up(entry, vocabulary):
    """The `Known` of an entry with its calls, {name as written: Call}."""
    known = known_of(entry)
    if known.vocabulary is vocabulary:
        return known
    calls, linked = {}, {}
    for field, text in kind_of(entry).texts(entry):
        for use in vocabulary.uses(text):
            linked[field] = None
            if use.written not in calls:
                target = vocabulary.target(use.written)
                calls[use.written] = Call(target, field, use.start)
    if list(calls) != list(known.calls or ()):
        known.results.clear()
    known.vocabulary, known.calls, known.linked = vocabulary, calls, tuple(linked)
    return known
