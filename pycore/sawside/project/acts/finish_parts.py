"""The act that lists the parts of a project for How much finish, by the lines that they are of."""

from sawside.errors import Refusal
from sawside.lengths.units import METRIC
from sawside.lengths.words import counted, listed
from sawside.project.acts.keep import keep_line
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.schema.document import unit_of
from sawside.project.schema.finding import of_kind
from sawside.reckoners.finish.shared.amount_fields import POURED
from sawside.reckoners.finish.shared.faces import MOST_ROWS
from sawside.reckoning.links import AREA, area_of_parts
from sawside.reckoning.reckon import find

_QUESTION, _COATS = "finish_amount", "coats"


def finish_parts(document):
    """A new line How much finish, with both faces of the parts of each line, linked by its name,
    and the finish that the project's Coats has.

    Edging, and what has no width, is left out. Its answer is seen to by the caller. Refusals:
    "impossible" where there is no such part, or more lines than the list holds.
    """
    lines, left_out = [], []
    evaluation = Evaluation(document)
    for entry in of_kind(document, "line"):
        worked = evaluation.worked[entry["id"]]
        if not worked.ok or not worked.found.parts:
            continue
        if area_of_parts(worked.found):
            lines.append(entry["name"])
        else:
            left_out.append(entry["name"])
    _refuse(lines)
    areas = "areas_metric" if unit_of(document) in METRIC else "areas_us"
    rows = [{"area": f"[{name}: {AREA}]"} for name in lines]
    values = {"parts_by": "area", areas: rows} | _as_coated(document)
    new, undo, _, identity = keep_line(document, find(_QUESTION), values)
    without = f", without {listed(sorted(left_out))}" if left_out else ""
    said = f"Took both faces of the parts of {counted(len(rows), 'line')}{without}."
    return new, undo, said, identity


def _as_coated(document):
    """The finish of the last line of Coats, and how many coats where that was typed."""
    lines = [each for each in of_kind(document, "line") if each["reckoner"] == _COATS]
    values = lines[-1]["values"] if lines else {}
    finish = values.get("finish")
    if not (isinstance(finish, str) and finish in POURED):
        return {}
    return {key: values[key] for key in ("finish", "coats") if values.get(key)}


def _refuse(lines):
    if not lines:
        raise Refusal(
            "impossible",
            "No part of this project has a width.",
            "Save a case or a part first, with its width.",
            field="document",
        )
    if len(lines) > MOST_ROWS:
        raise Refusal(
            "impossible",
            f"{len(lines)} lines have parts, and the list holds {MOST_ROWS}.",
            "Fill in How much finish yourself, with sizes that are nearly alike as one.",
            field="document",
        )
