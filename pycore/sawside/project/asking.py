"""Asking with the names of a project: a question not yet kept, and the details of an entry."""

from sawside.errors import Refusal, Refusals
from sawside.project.document import read_document
from sawside.project.entry_told import entry_told
from sawside.project.evaluate import Evaluation
from sawside.project.finding import found
from sawside.project.names_for import names_for
from sawside.reckoning.answers import told
from sawside.reckoning.links import label_of, linkable_answers
from sawside.reckoning.values import linkable


def names_of_reading(message, text):
    """What the names in a text stand for in the document of a message; None without one."""
    if message.get("document") is None:
        return None
    return names_for(read_document(message["document"]), [text], message.get("id"))


def names_of_question(message, reckoner, values):
    """The same for the texts of a question."""
    if message.get("document") is None or not isinstance(values, dict):
        return None
    texts = [text for _, text in linkable(reckoner, values)]
    return names_for(read_document(message["document"]), texts, message.get("id"))


def entry_in_full(document, identity):
    """The contract of `entry`: one entry with all that `reckon` answers, and what may link to it.

    Refusals: "unknown" for an id that is not there.
    """
    _, entry = found(document, identity)
    evaluation = Evaluation(document)
    worked = evaluation.worked.get(identity)
    whole, links = None, []
    if worked is not None and worked.ok:
        if entry["kind"] == "line":
            whole = worked.whole
            links = [*_links(entry["name"], worked)]
        else:
            links = [_link(worked.headline["label"], entry["name"], worked.headline["text"])]
    return {"entry": entry_told(entry, evaluation), "reckoning": whole, "links": links}


def _links(name, worked):
    """Every answer that a name can stand for; the first is called by the line's name alone."""
    for answer, item, value in linkable_answers(worked.reckoner, worked.found):
        label = label_of(answer, item)
        try:
            text = told(answer, value, worked.show)["text"]
        except (Refusal, Refusals):
            continue
        first = answer.key == worked.reckoner.answers[0].key and item is None
        yield _link(label, name if first else f"{name}: {label}", text)


def _link(label, name, text):
    return {"label": label, "insert": f"[{name}]", "text": text}
