"""How sure a number is: what each reading behind it may be off by, and what that does to it.

Each reading is moved to the ends of what it may be, one at a time, and the number is worked out
again. At worst all are off in the bad direction together: the moves are added. Likely is the root
of the sum of their squares, as errors that know nothing of one another add up (textbook error
propagation; the readings are taken as independent). Where a number is no plain sum of its readings
this is close, not exact.
"""

from fractions import Fraction

from sawside.errors import Refusal, Refusals, quoted
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import sqrt
from sawside.lengths.show import Show
from sawside.lengths.tape_tolerances import RULES
from sawside.project.evaluate import Evaluation
from sawside.project.finding import found
from sawside.project.moves import Move, behind, lengths, value_of
from sawside.reckoning.answers import length_told
from sawside.reckoning.links import rational


def sure(document, identity, answer=None, rule=None):
    """The contract of `sure` for an entry's number: its first length, or the `answer` of that key.

    `rule`, one of `tape_tolerances.RULES`, adds what it allows to readings by a tape whose own
    error nobody measured. Refusals: "unknown", and those of an entry that has no answer.
    """
    _, entry = found(document, identity)
    if rule is not None and rule not in RULES:
        raise Refusal("unknown", "There is no such rule for tapes.", f"Use {', '.join(RULES)}.",
                      field="tape")  # fmt: skip
    evaluation = Evaluation(document)
    worked = evaluation.worked.get(identity)
    if worked is None:
        raise Refusal("unknown", "A note has no number.", "Choose a reading or a line.", field="id")
    if not worked.ok:
        raise Refusals(worked.refusals)
    key, label = _answer(entry, worked, answer)
    value = value_of(worked, key)
    moves = [
        Move(document, evaluation, each, rule, identity, key, value)
        for each in behind(evaluation, identity)
    ]
    moves.sort(key=lambda move: -move.spread)
    return _told(worked, key, label, value, moves)


def _answer(entry, worked, answer):
    """(key, label) of the number that is asked for; the key of a reading is None."""
    if entry["kind"] == "reading":
        if worked.power != 1:
            raise Refusal("unknown", "This is not a length.", "Choose a length.", field="id")
        return None, entry["name"]
    for key, label, _ in lengths(worked):
        if answer in (None, key):
            return key, label
    raise Refusal("unknown", f"There is no length {quoted(str(answer or ''))} among the answers.",
                  "Choose another answer.", field="answer")  # fmt: skip


def _told(worked, key, label, value, moves):
    show = Show(worked.settings)
    down = sum((move.down for move in moves), Fraction(0))
    up = sum((move.up for move in moves), Fraction(0))
    squares = sum((move.spread**2 for move in moves), Fraction(0))
    likely, worst = rational(sqrt(squares)), max(up, -down)
    middle = value + (up + down) / 2
    likely_text, worst_text = fine_text(likely, show), fine_text(worst, show)
    told = length_told("value", label, value, show)
    return {
        "value": told,
        "label": label,
        "worst": _range(value + down, value + up, worst, show),
        "likely": _range(middle - likely, middle + likely, likely, show),
        "readings": [_reading(move, squares, show) for move in moves],
        "measure_again": _again(moves, squares),
        "fit": _fit(worked, worst, show) if key is not None else None,
        "said": f"{told['text']}, likely within {likely_text}, at worst within {worst_text}."
        if moves
        else f"{told['text']}: no reading is behind it.",
    }


def _range(low, high, by, show):
    return {
        "low": _fine("low", "At least", low, show),
        "high": _fine("high", "At most", high, show),
        "by": _fine("by", "Within", by, show),
    }


def _fine(key, label, value, show):
    return length_told(key, label, on_fine_marks(value, show), show)


def _reading(move, squares, show):
    return {
        "id": move.worked.entry["id"],
        "name": move.name,
        "text": move.worked.entry["text"],
        "by": fine_text(move.off, show),
        "moves": _fine("moves", "Moves it by", max(move.up, -move.down), show),
        "share": _share(move, squares),
    }


def _share(move, squares):
    return f"{round(100 * move.spread**2 / squares)} %" if squares else "0 %"


def _again(moves, squares):
    """The reading that makes most of what is unsure; None where nothing is."""
    if not squares:
        return None
    first = moves[0]
    said = f"Measure {first.name} again: it makes {_share(first, squares)} of what is unsure."
    return {"id": first.worked.entry["id"], "name": first.name, "said": said}


def _fit(worked, worst, show):
    """Whether a clearance of the question covers the worst case; None where it has none."""
    for field in worked.reckoner.fields:
        clearance = getattr(worked.form.given, field.key, None)
        if field.kind != "length" or "clearance" not in field.key or clearance is None:
            continue
        covers = clearance >= worst
        told = length_told("clearance", field.label, clearance, show)
        size = fine_text(clearance, show)
        verdict = "covers it" if covers else f"does not cover {fine_text(worst, show)}"
        return {"field": field.key, "label": field.label, "clearance": told, "covers": covers,
                "said": f"The clearance of {size} {verdict}."}  # fmt: skip
    return None
