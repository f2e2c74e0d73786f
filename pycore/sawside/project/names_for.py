"""What the names in new texts stand for in a project, for a question that is not yet kept."""

from sawside.errors import Refusal, quoted
from sawside.project.evaluate import Evaluation


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
            try:
                names[use.written] = _value(evaluation, use, text, behind)
            except Refusal as refusal:
                names[use.written] = refusal
    return names


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
