"""The tally of the pad: changed by an act, and told with every line worked out."""

from sawside.errors import Refusal
from sawside.lengths.settings import read_settings
from sawside.project.checks import MOST_NAME
from sawside.project.document import read_document
from sawside.project.names_for import NamesOf
from sawside.project.tally_acts import ACTS
from sawside.project.tally_document import EMPTY, read_tally
from sawside.project.tally_lines import Around, worked_out


def tally_told(data, act, settings_data, document=None, project=None):
    """The contract of `tally` (without "ok"): a tally changed by an act (None: only told).

    `document` is the project whose names lines may use, `project` what the page knows it by.

    Refusals: "message" for a damaged tally or an act that is none, "unknown" for a line that is
    not there, "missing" where there is nothing to repeat, and those of reading what is entered.
    """
    tally = EMPTY if data is None else read_tally(data)
    document = None if document is None else read_document(document)
    if project is not None and (not isinstance(project, str) or len(project) > MOST_NAME):
        raise Refusal("message", "The project's id is not a short text.", "Leave it out.",
                      field="project")  # fmt: skip
    around = Around(read_settings(settings_data), NamesOf(document, project or ""))
    undo = None
    if act is not None:
        if not isinstance(act, dict) or act.get("act") not in ACTS:
            offered = ", ".join(ACTS)
            raise Refusal(
                "message", "There is no such act.", f"Send one of {offered}.", field="act"
            )
        tally, undo = ACTS[act["act"]](tally, act, around)
    return {"tally": tally, "undo": undo, "lines": worked_out(tally, around)[0]}
