"""One entry of a project with all that belongs to it."""

from sawside.errors import Refusal, Refusals
from sawside.lengths.areas import area_text, unit_of_areas
from sawside.project.entry_told import entry_told
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.schema.finding import found
from sawside.project.steps.steps_ahead import steps_of
from sawside.reckoning.answers import told
from sawside.reckoning.links import AREA, area_of_parts, label_of, linkable_answers


def entry_in_full(document, id, now=None):
    """The contract of `entry`: one entry with all that `reckon` answers, and what may link to it.

    By `now`, a `datetime`, a step of it is due.

    Refusals: "unknown" for an id that is not there.
    """
    _, entry = found(document, id)
    evaluation = Evaluation(document)
    worked = evaluation.worked.get(id)
    whole, links = None, []
    if worked is not None and worked.ok:
        if worked.reckoner is not None:
            whole = worked.whole
            if steps := steps_of(entry, worked, now):
                whole = whole | {"steps": steps}
            links = [*_links(entry["name"], worked)]
        else:
            said = worked.headline
            text = said.get("brief", said["text"])
            links = [_link(said["label"], said["kind"], entry["name"], text)]
    return {"entry": entry_told(entry, evaluation), "reckoning": whole, "links": links}


def _links(name, worked):
    """Every answer that a name can stand for; the main one is called by the line's name alone."""
    for answer, item, value in linkable_answers(worked.reckoner, worked.found):
        label = label_of(answer, item)
        try:
            said = told(answer, value, worked.show)
            text = said.get("brief", said["text"])
        except (Refusal, Refusals):
            continue
        main = answer.key == worked.main.key and item is None
        yield _link(label, answer.kind, name if main else f"{name}: {label}", text)
    if area := area_of_parts(worked.found):
        yield _link(AREA, "area", f"{name}: {AREA}", area_text(area, unit_of_areas(worked.show)))


def _link(label, kind, name, text):
    return {"label": label, "kind": kind, "insert": f"[{name}]", "text": text}
