"""Reading the person's own tapes from the settings: a row for each, its parts as typed."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.reading.reader import read_length
from sawside.settings.own_rows import RowKind
from sawside.settings.own_tape import OwnTape

PARTS = {
    "name": ("Name", None, None),
    "case": ("Case length", "1/2 in", "12 in"),
    "block": ("Reference block", "1/8 in", "10 ft"),
    "block_reads": ("Tape reads on the block", "1/8 in", "10 ft"),
    "distance": ("Trusted distance", "1 ft", "330 ft"),
    "distance_reads": ("Tape reads over the distance", "1 ft", "330 ft"),
}
"""The parts of a tape in their order: label, and least and most of a length, inclusive."""

TAPES = RowKind("tapes", "tape", {part: label for part, (label, _, _) in PARTS.items()})
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


def read_tapes(rows, unit):
    """(tapes, refusals): the tapes of rows of texts, and all that is wrong with them.

    A bare number is in `unit`.
    """
    return TAPES.read(rows, lambda number, texts: _tape(number, texts, unit))


def _tape(number, texts, unit):
    wrong, read = list(_halves(number, texts)), {}
    for part in list(PARTS)[1:]:
        try:
            read[part] = _length(part, texts[part], unit)
        except Refusal as refusal:
            said = refusal.kind, refusal.message, refusal.remedy
            wrong.append(TAPES.refusal(*said, number, part, refusal.at))
    if wrong:
        return None, wrong
    tape = OwnTape(texts["name"], **read)
    if found := fault(tape):
        part, message = found
        wrong.append(TAPES.refusal("range", message, _CHECK, number, part))
    return tape, wrong


def _halves(number, texts):
    """What is true and what the tape reads there belong together."""
    for true, reads in (("block", "block_reads"), ("distance", "distance_reads")):
        for part, other in ((true, reads), (reads, true)):
            if texts[other] and not texts[part]:
                message = f"{PARTS[part][0]} is blank."
                yield TAPES.refusal("missing", message, "Fill it in, or clear both.", number, part)


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
