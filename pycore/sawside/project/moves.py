"""The readings behind a number, and what each does to it when it is off."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text
from sawside.lengths.show import Show
from sawside.lengths.tape_tolerances import tolerance
from sawside.project.evaluate import Evaluation
from sawside.project.fineness import bounds
from sawside.project.worked import moved
from sawside.reckoning.links import label_of, linkable_answers, rational

_LONGEST = 1200
"""Inches: the rules for tapes end at a hundred feet."""


class Move:
    """What one reading does to the number: `down` and `up` in exact inches, and half their span."""

    def __init__(self, document, evaluation, reading, rule, identity, key, value):
        self.worked = evaluation.worked[reading]
        self.name = evaluation.names[reading]
        low, high = bounds(self.worked)
        if rule is not None and not _measured(self.worked):
            length = min(abs(self.worked.named("").value), _LONGEST)
            allowed = tolerance(rule, length).inches
            low, high = low - allowed, high + allowed
        self.off = max(-low, high)
        ends = [Fraction(0)]
        for by in (low, high):
            instead = {reading: moved(self.worked, by)}
            after = Evaluation(document, instead).worked[identity]
            if not after.ok:
                raise Refusal(
                    "impossible",
                    f"With {self.name} off by {fine_text(abs(by), Show(self.worked.settings))}: "
                    f"{after.refusals[0].message}",
                    "It is at its limit: measure again, or leave more room.",
                )
            ends.append(value_of(after, key) - value)
        self.down, self.up = min(ends), max(ends)
        self.spread = (self.up - self.down) / 2


def behind(evaluation, identity):
    """The readings that a number is made of, itself included."""
    seen, waiting = {}, [identity]
    while waiting:
        each = waiting.pop()
        if each not in seen:
            seen[each] = None
            waiting += evaluation.graph.links.uses[each]
    return [each for each in seen if _is_measured(evaluation, each)]


def _is_measured(evaluation, identity):
    known = evaluation.graph.known[identity]
    worked = evaluation.worked[identity]
    return known.entry["kind"] == "reading" and not known.calls and worked.power == 1


def _measured(worked):
    """Whether a reading was corrected by what its tape is known to be off."""
    name = worked.entry.get("tape")
    tape = next((each for each in worked.settings.tapes if each.name == name), None)
    return tape is not None and (tape.block is not None or tape.distance is not None)


def lengths(worked):
    """(key, label, value) of every length among the answers, and of every item of a list."""
    for each, item, value in linkable_answers(worked.reckoner, worked.found):
        if each.kind == "length":
            yield each.key if item is None else f"{each.key}.{item}", label_of(each, item), value


def value_of(worked, key):
    """The exact inches of an answer by its key; None is a reading's own."""
    if key is None:
        return worked.named("").value
    values = {each: value for each, _, value in lengths(worked)}
    if key not in values:
        raise Refusal("impossible", "That answer is not there any more.", "Measure again.")
    return rational(values[key])
