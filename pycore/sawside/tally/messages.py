"""The tally of the pad: changed by an act, and told with every line worked out."""

from sawside.errors import Refusal
from sawside.project.evaluation.names_for import NamesOf
from sawside.project.schema.checks import MOST_NAME, Damaged
from sawside.project.schema.document import read_document
from sawside.settings.settings import read_settings
from sawside.tally.acts import ACTS, BRING_BACK
from sawside.tally.document import EMPTY, read_tally
from sawside.tally.lines import Around, worked_out
from sawside.tally.names import up_to_date


def tally_told(data, act, settings_data, document=None, project=None):
    """The contract of `tally` (without "ok"): a tally changed by an act (None: only told).

    `document` is the project whose names lines may use, `project` what the page knows it by. Names
    of it that were changed are followed.

    Refusals: "message" for a damaged tally or an act that is none, "unknown" for a line that is
    not there, "missing" where there is nothing to repeat, and those of reading what is entered.
    """
    tally, around = opened(data, settings_data, document, project)
    undo = None
    if act is not None:
        if not _is_act(act):
            offered = ", ".join(ACTS)
            raise Refusal(
                "message", "There is no such act.", f"Send one of {offered}.", field="act"
            )
        tally, undo = _changed(tally, act, around)
        tally = up_to_date(tally, around.project)
    return {"tally": tally, "undo": undo, "lines": worked_out(tally, around)[0]}


def opened(data, settings_data, document, project):
    """(a checked tally, up to date; what its lines are read by) of what a message holds."""
    tally = EMPTY if data is None else read_tally(data)
    document = None if document is None else read_document(document)
    if project is not None and not _is_short(project):
        raise Refusal(
            "message", "The project's id is not a short text.", "Leave it out.", field="project"
        )
    around = Around(read_settings(settings_data), NamesOf(document, project or ""))
    return up_to_date(tally, around.project), around


def _is_short(text):
    return isinstance(text, str) and len(text) <= MOST_NAME and text.isprintable()


def _changed(tally, act, around):
    """(the tally after an act, what undoes it): one that can be opened again."""
    name = act["act"]
    try:
        tally, undo = ACTS[name](tally, act, around)
        return read_tally(tally), undo
    except Damaged as fault:
        if name in BRING_BACK:
            raise
        raise fault.as_typed() from None


def _is_act(act):
    name = act.get("act") if isinstance(act, dict) else None
    return isinstance(name, str) and name in ACTS
