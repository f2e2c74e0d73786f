"""The readings behind an entry, and the entry worked out again with some of them moved."""

from sawside.lengths.tape_tolerances import tolerance
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.evaluation.worked import moved
from sawside.project.uncertainty.resolution import bounds

_LONGEST = 1200
"""Inches: the rules for tapes end at a hundred feet."""


class Reading:
    """One reading, and what it may be off by: `low` and `high` in exact inches."""

    def __init__(self, evaluation, identity, rule):
        self.id = identity
        self.name = evaluation.names[identity]
        self.worked = worked = evaluation.worked[identity]
        low, high = bounds(worked)
        if rule is not None and worked.off is None and not _measured(worked):
            allowed = tolerance(rule, min(abs(worked.named("").value), _LONGEST)).inches
            low, high = low - allowed, high + allowed
        self.low, self.high = low, high


class Perturbed:
    """An entry with some of its `readings` moved; each such case is worked out once.

    Only what lies between a moved reading and the entry is worked out again.
    """

    def __init__(self, document, evaluation, identity, rule=None):
        self._document, self._evaluation, self._identity = document, evaluation, identity
        self._behind = _behind(evaluation, identity)
        self._known = {}
        self.worked = evaluation.worked[identity]
        self.readings = [
            Reading(evaluation, each, rule)
            for each in self._behind
            if _is_measured(evaluation, each)
        ]

    def by(self, offs):
        """The entry's result, whatever it is, with readings off by so much: {id: exact inches}."""
        key = frozenset(offs.items())
        if key not in self._known:
            self._known[key] = self._work(offs)
        return self._known[key]

    def _work(self, offs):
        graph, worked = self._evaluation.graph, self._evaluation.worked
        after = set(offs).union(*(graph.links.after(each) for each in offs))
        again = after & self._behind.keys()
        instead = {each: result for each, result in worked.items() if each not in again}
        for each in sorted(offs, key=graph.links.order.index):
            now = worked[each]
            if graph.known[each].calls:  # a sum first moves with what it uses
                now = Evaluation(self._document, instead).worked[each]
            if not now.ok:
                return now
            instead[each] = moved(now, offs[each])
        return Evaluation(self._document, instead).worked[self._identity]


def _behind(evaluation, identity):
    """The entries that one is made of, itself included, in an order that stays."""
    seen, waiting = {}, [identity]
    while waiting:
        each = waiting.pop()
        if each not in seen:
            seen[each] = None
            waiting += evaluation.graph.links.uses[each]
    return seen


def _is_measured(evaluation, identity):
    known = evaluation.graph.known[identity]
    worked = evaluation.worked[identity]
    is_length = worked.reckoner is None and worked.power == 1
    return is_length and (not known.calls or worked.off is not None)


def _measured(worked):
    """Whether a reading was corrected by what its tape is known to be off."""
    name = worked.entry.get("tape")
    tape = next((each for each in worked.settings.tapes if each.name == name), None)
    return tape is not None and (tape.block is not None or tape.distance is not None)
