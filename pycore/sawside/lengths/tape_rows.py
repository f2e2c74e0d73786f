"""Reading the person's own tapes from the settings: a row for each, its parts as typed."""

from fractions import Fraction

from sawside.errors import Refusal, quoted
from sawside.lengths.own_tape import OwnTape
from sawside.lengths.reader import read_length

MOST_NAME = 40
FIELD = "settings.tapes"

PARTS = {
    "name": ("Name", None, None),
    "case": ("Case length", "1/2 in", "12 in"),
    "block": ("Reference block", "1/8 in", "10 ft"),
    "block_reads": ("Tape reads on the block", "1/8 in", "10 ft"),
    "distance": ("Trusted distance", "1 ft", "330 ft"),
    "distance_reads": ("Tape reads over the distance", "1 ft", "330 ft"),
}
"""The parts of a tape in their order: label, and least and most of a length, inclusive."""

_MOST_HOOK = Fraction(1, 2)
_MOST_STRETCH = Fraction(1, 50)
_CHECK = "Check both numbers and their units."


def fault(tape):
    """(part, sentence) of a tape that is farther off than any tape is; None of one that may be.

    More than half an inch at the hook, or one part in fifty along the scale, was mistyped.
    """
    both = tape.distance is not None and tape.block is not None
    if both and (tape.distance_reads <= tape.block_reads or tape.distance <= tape.block):
        return "distance_reads", "The trusted distance must be longer than the block."
    if abs(tape.scale - 1) > _MOST_STRETCH:
        return "distance_reads", "Over that distance the tape would be off by more than 1 in 50."
    if abs(tape.hook) > _MOST_HOOK:
        return "block_reads", "The hook would be off by more than 1/2 in."
    return None


def row_texts(number, row):
    """A row from a message as one text for each part; None for a row with nothing in it.

    Refusals "message" and "unknown" name the row (from 0).
    """
    if not isinstance(row, dict):
        raise _refusal("message", "this is no tape.", "Send its parts by name.", number)
    for part, value in row.items():
        if part not in PARTS:
            message = f"a tape has no {quoted(str(part))}."
            raise _refusal("unknown", message, "Take it away.", number)
        if isinstance(value, bool) or not isinstance(value, (str, int, float)):
            message = f"{PARTS[part][0]} is not a text."
            raise _refusal("message", message, "Send it as it was typed.", number, part)
    texts = tuple(str(row.get(part, "")).strip() for part in PARTS)
    return texts if any(texts) else None


def read_tapes(rows, unit):
    """(tapes, refusals): the tapes of `row_texts`, and all that is wrong with them.

    A bare number is in `unit`.
    """
    tapes, refusals, taken = [], [], set()
    for number, row in enumerate(rows):
        if row is None:
            continue
        texts = dict(zip(PARTS, row, strict=True))
        wrong = [*_name_faults(number, texts["name"], taken), *_halves(number, texts)]
        taken.add(texts["name"].casefold())
        read = {}
        for part in list(PARTS)[1:]:
            try:
                read[part] = _length(part, texts[part], unit)
            except Refusal as refusal:
                said = refusal.kind, refusal.message, refusal.remedy
                wrong.append(_refusal(*said, number, part, refusal.at))
        tape = OwnTape(texts["name"], **read) if not wrong else None
        if tape is not None and (found := fault(tape)):
            part, message = found
            wrong.append(_refusal("range", message, _CHECK, number, part))
        tapes.append(tape)
        refusals += wrong
    return tuple(tapes), refusals


def _name_faults(number, name, taken):
    if not name:
        yield _refusal("missing", "Name is blank.", "Give the tape a name.", number, "name")
    elif name.casefold() in taken:
        message = f"there is another tape called {quoted(name)}."
        yield _refusal("conflict", message, "Give it another name.", number, "name")
    if len(name) > MOST_NAME or not name.isprintable():
        message = f"a name has at most {MOST_NAME} characters, all of them to be seen."
        yield _refusal("range", message, "Shorten it.", number, "name")


def _halves(number, texts):
    """What is true and what the tape reads there belong together."""
    for true, reads in (("block", "block_reads"), ("distance", "distance_reads")):
        for part, other in ((true, reads), (reads, true)):
            if texts[other] and not texts[part]:
                message = f"{PARTS[part][0]} is blank."
                yield _refusal("missing", message, "Fill it in, or clear both.", number, part)


def _length(part, text, unit):
    if not text:
        return None
    value = read_length(text, unit).value
    label, least, most = PARTS[part]
    for bound, words, outside in (
        (least, "at least", value < read_length(least).value),
        (most, "at most", value > read_length(most).value),
    ):
        if outside:
            message = f"{label} must be {words} {bound}."
            raise Refusal("range", message, "Check the number and its unit.", at=0)
    return value


def _refusal(kind, message, remedy, row, part=None, at=None):
    message = f"Tape {row + 1}: {message}"
    return Refusal(kind, message, remedy, field=FIELD, row=row, part=part, at=at)
