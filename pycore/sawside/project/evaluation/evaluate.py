"""Every entry of a document worked out, each after what it uses.

Only what depends on a change is worked out again: an entry whose text, settings and the numbers of
its names are as they were keeps what was worked out of it (`memory`).
"""

from sawside.errors import Refusal
from sawside.project.evaluation.graph import Graph
from sawside.project.evaluation.worked import Failed, Waiting, worked_out
from sawside.project.schema.document import settings_of

_HELD = 2
"""How many results of an entry are remembered: before a change and after it."""


class Evaluation:
    """`graph` and `worked`, the result of every entry that has a value, by id."""

    def __init__(self, document, instead=None):
        """`instead` are results to take for some entries, by id; nothing of it is remembered."""
        self.graph = graph = Graph(document)
        self.names = {entry["id"]: entry["name"] for entry in document["entries"]}
        self.worked = worked = {}
        self._held = _HELD if instead is None else 0
        units = {}
        for identity in graph.links.order:
            if instead is not None and identity in instead:
                worked[identity] = instead[identity]
                continue
            known = graph.known[identity]
            unit = known.entry["unit"]
            settings = units.get(unit)
            if settings is None:
                settings = units[unit] = settings_of(document, unit)
            worked[identity] = self._work(known, settings)
        for identity in graph.known:
            if identity not in worked:
                worked[identity] = self._in_cycle(identity)

    def _work(self, known, settings):
        if not known.calls:
            return _remembered(known, settings, (), self._held)
        inputs = []
        for call in known.calls.values():
            target = call.target
            used = target and self.worked.get(target.entry)
            if not used or not used.ok:
                return self._waiting(known)
            try:
                inputs.append(used.named(target.answer))
            except Refusal as refusal:
                said = f"{self.names[target.entry]}: {refusal.message}"
                return Failed([_at(call, Refusal(refusal.kind, said, refusal.remedy))])
        return _remembered(known, settings, tuple(inputs), self._held)

    def _waiting(self, known):
        """What an entry waits for: what nobody gave, and what has no value itself."""
        waits, first = {}, None
        for written, call in known.calls.items():
            used = call.target and self.worked.get(call.target.entry)
            if not used or not used.ok:
                first = first or call
                identity = call.target and call.target.entry
                waits[identity, self.names[identity] if identity else written] = None
        missing = [name for identity, name in waits if identity is None]
        if missing:
            message = f"There’s no {missing[0]} in this project."
            remedy = "Save it under that name, or change this."
        else:
            message = f"Waiting on {' and '.join(name for _, name in waits)}."
            remedy = "Fix that one first."
        return Waiting([*waits], _at(first, Refusal("missing", message, remedy)))

    def _in_cycle(self, identity):
        """The result of an entry that stands in a circle, or waits for one that does."""
        cycle = self.graph.links.cycle
        if identity not in cycle:
            return self._waiting(self.graph.known[identity])
        chain = " → ".join(self.names[each] for each in cycle)
        return Failed(
            [
                Refusal(
                    "conflict",
                    f"This refers back to itself: {chain}.",
                    "Type a number in one of them.",
                )
            ]
        )


def _remembered(known, settings, inputs, held):
    """The result of an entry with these numbers for its names, worked out at most once.

    So many results are `held` for another time, if any.
    """
    results = known.results
    for at, (with_settings, with_inputs, worked) in enumerate(results):
        if with_inputs == inputs and (with_settings is settings or with_settings == settings):
            if at:
                results.insert(0, results.pop(at))
            return worked
    like = results[0][2] if results and inputs and results[0][0] is settings else None
    names = dict(zip(known.calls, inputs, strict=True)) if inputs else None
    worked = worked_out(known.entry, settings, names, known.linked, like if _alike(like) else None)
    if held:
        results.insert(0, (settings, inputs, worked))
        del results[held:]
    return worked


def _alike(worked):
    return worked is not None and worked.ok


def _at(call, refusal):
    refusal.field = call.field.key if call.field else "text"
    refusal.at = call.at
    return refusal
