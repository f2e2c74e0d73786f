"""What the names in new texts stand for in a project, for a question that is not yet kept."""

from functools import cached_property

from sawside.errors import Refusal, quoted
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.evaluation.vocabulary import longest_of, uses_beside


class NamesOf:
    """The names of a document for texts that stand outside of it; none without a document.

    `identity` is what the page calls the document (store/project/identity.js): only within one do
    the ids of entries mean the same, and two may have the same name.
    """

    def __init__(self, document, identity=""):
        self._document, self._identity = document, identity

    @property
    def name(self):
        """The name of the project; None without one."""
        return self._document and self._document["name"]

    @property
    def identity(self):
        """What the page calls the document; None without one."""
        return None if self._document is None else self._identity

    def is_of(self, mark):
        """Whether a text with this mark means this document."""
        return self._document is not None and mark["id"] == self._identity

    @cached_property
    def _evaluation(self):
        return Evaluation(self._document)

    def uses(self, text, lines=()):
        """Every `Use` of a name in a text, of these or of `lines` of a tally, in small letters."""
        if self._document is None:
            return uses_beside(text, lines, longest_of(()))
        return uses_beside(text, lines, self._evaluation.graph.vocabulary.longest)

    def target(self, written):
        """The `Target` that a name means as it is written; None where the project has none."""
        if self._document is None:
            return None
        return self._evaluation.graph.vocabulary.target(written)

    def called(self, entry):
        """The name of an entry by its id; None where it is gone."""
        return None if self._document is None else self._evaluation.names.get(entry)

    def named(self, target, written):
        """What a `Target` stands for, or the Refusal that says why it stands for nothing."""
        try:
            if self.called(target.entry) is None:
                raise _none_there(written)
            return _number(self._evaluation, target, written)
        except Refusal as refusal:
            return refusal


def names_for(document, texts, but=None, lines=()):
    """For each text, {name as written: its `Named`, or the `Refusal` that says why it has none}.

    `but` is the id of the entry that is being corrected: what depends on it can't be used. `lines`
    are names of a tally that may stand in the texts as well, in small letters.
    """
    evaluation = Evaluation(document)
    links = evaluation.graph.links
    behind = {but} | links.after(but) if but in links.uses else set()
    return [
        {
            use.written: _named(evaluation, use, text, behind)
            for use in uses_beside(text, lines, evaluation.graph.vocabulary.longest)
        }
        for text in texts
    ]


def _named(evaluation, use, text, behind):
    try:
        return _value(evaluation, use, text, behind)
    except Refusal as refusal:
        return refusal


def _value(evaluation, use, text, behind):
    vocabulary = evaluation.graph.vocabulary
    target = vocabulary.target(use.written)
    if target is None:
        raise _none_there(use.written, use.end == len(text) and vocabulary.begins(use.written))
    if target.entry in behind:
        raise Refusal(
            "conflict",
            f"{quoted(use.written)} depends on this one, so it can’t be used here.",
            "Use another name, or type the number.",
        )
    return _number(evaluation, target, use.written)


def _none_there(written, unfinished=False):
    return Refusal(
        "missing",
        f"There’s no {written} in this project.",
        "Use a name that’s there, or save it under that name first.",
        unfinished=unfinished,
    )


def _number(evaluation, target, written):
    worked = evaluation.worked.get(target.entry)
    if worked is None or not worked.ok:
        message = f"{quoted(written)} has no value yet."
        raise Refusal("missing", message, "Fix that one first.")
    return worked.named(target.answer)
