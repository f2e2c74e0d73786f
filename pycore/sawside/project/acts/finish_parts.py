"""The act that lists the parts of a project for How much finish, each size once."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.display import mixed_text
from sawside.lengths.units import INCHES_PER, METRIC
from sawside.lengths.words import counted, listed
from sawside.project.acts.keep import keep_line
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.pieces.pieces import pieces_of
from sawside.project.schema.document import unit_of
from sawside.reckoners.finish.shared.faces import MOST_ROWS
from sawside.reckoning.reckon import find

_QUESTION = "finish_amount"
_EDGING = "edge_strip"
"""Its face is the edge of a panel."""


def finish_parts(document):
    """A new line How much finish, with both faces of each part that has a width; edging is none.

    Its answer is seen to by the caller. Refusals: "impossible" where there is no such part, or more
    sizes than the list holds.
    """
    counts, left_out = {}, []
    for piece in pieces_of(document, Evaluation(document), drawings=False):
        if piece.part.width is None or piece.entry["reckoner"] == _EDGING:
            left_out.append(piece.told["name"])
            continue
        size = tuple(Fraction(piece.told[way]["mark"]) for way in ("length", "width"))
        counts[size] = counts.get(size, 0) + piece.part.count
    _refuse(counts)
    unit = unit_of(document)
    rows = [_row(size, count, unit if unit in METRIC else "in") for size, count in counts.items()]
    new, undo, _, identity = keep_line(document, find(_QUESTION), {"faces": rows})
    without = f", without {listed(sorted(left_out))}" if left_out else ""
    said = f"Listed {counted(len(rows), 'size')} of parts to finish{without}."
    return new, undo, said, identity


def _refuse(counts):
    if not counts:
        raise Refusal(
            "impossible",
            "No part of this project has a width.",
            "Save a case or a part first, with its width.",
            field="document",
        )
    if len(counts) > MOST_ROWS:
        raise Refusal(
            "impossible",
            f"The parts have {len(counts)} sizes, and the list holds {MOST_ROWS}.",
            "Fill in How much finish yourself, with sizes that are nearly alike as one.",
            field="document",
        )


def _row(size, count, unit):
    long, wide = (f"{mixed_text(each / INCHES_PER[unit])} {unit}" for each in size)
    return {"length": long, "width": wide, "count": str(count)}
