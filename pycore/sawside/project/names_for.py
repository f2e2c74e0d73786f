"""What the names in new texts stand for in a project, for a question that is not yet kept."""

from functools import cached_property

from sawside.errors import Refusal, quoted
from sawside.project.evaluate import Evaluation


class NamesOf:
    """The names of a document for texts that stand outside of it; none without a document.

    `identity` is what the page calls the project: two may have the same name.
    """

    def __init__(self, document, identity=""):
        self._document, self._identity = document, identity

    @property
    def mark(self):
        """What a text is marked with that means names of this project; None without one."""
        if self._document is None:
            return None
        return {"id": self._identity, "name": self._document["name"]}

    def is_of(self, mark):
        """Whether a text with this mark means this project."""
        return self._document is not None and mark["id"] == self._identity

    @cached_property
    def _evaluation(self):
        return Evaluation(self._document)

    def used_in(self, text):
        """{name as written: what it stands for} of the project's names that a text uses."""
        if self._document is None:
            return {}
        vocabulary = self._evaluation.graph.vocabulary
        uses = [use for use in vocabulary.uses(text) if vocabulary.target(use.written) is not None]
        return {use.written: _named(self._evaluation, use, text, ()) for use in uses}


def names_for(document, texts, but=None):
    """{name as written: its `Named`, or the `Refusal` that says why it has none}.

    `but` is the id of the entry that is being corrected: what depends on it can't be used.
    """
    evaluation = Evaluation(document)
    links = evaluation.graph.links
    behind = {but} | links.after(but) if but in links.uses else set()
    names = {}
    for text in texts:
        for use in evaluation.graph.vocabulary.uses(text):
            names[use.written] = _named(evaluation, use, text, behind)
    return names


def _named(evaluation, use, text, behind):
    try:
        return _value(evaluation, use, text, behind)
    except Refusal as refusal:
        return refusal


def _value(evaluation, use, text, behind):
    vocabulary = evaluation.graph.vocabulary
    target = vocabulary.target(use.written)
    if target is None:
        raise Refusal(
            "missing",
            f"There is no {use.written} in this project.",
            "Use a name that is there, or keep it under that name first.",
            unfinished=use.end == len(text) and vocabulary.begins(use.written),
        )
    if target.entry in behind:
        raise Refusal(
            "conflict",
            f"{quoted(use.written)} is worked out from this one: it would go round in a circle.",
            "Use another name, or type the number.",
        )
    worked = evaluation.worked[target.entry]
    if not worked.ok:
        message = f"{quoted(use.written)} has no value yet."
        raise Refusal("missing", message, "Mend that one first.")
    return worked.named(target.answer)
