"""What an answer is worth in another sum: an exact number that a name can stand for."""

from dataclasses import replace
from fractions import Fraction

from sawside.errors import Refusal, quoted
from sawside.lengths.bounded import is_bounded
from sawside.lengths.marks import exact_of
from sawside.lengths.reading.names import SQUARE, Named
from sawside.lengths.real import FIRST_BITS, Real, enclosed, simplest_between
from sawside.reckoning.main_answer import main_answer
from sawside.reckoning.old_labels import ALONE, OLD_LABELS

BITS = 160
"""An irrational answer goes into another sum as a fraction within 2**-160: some 48 decimals."""

_NARROW, _SIMPLE = Fraction(1, 1 << 56), 1 << 16
"""In an enclosure as narrow as this there is a fraction with such a denominator by chance once in
some sixteen million times."""

_POWERS = {"length": 1, "lengths": 1, "count": 0, "angle": 1, "weight": 0}


AREA = "Area of parts"
"""What one face of all parts of a line is called behind its name, however many answers it has."""


def area_of_parts(found):
    """One face of every part that has a width, in exact square inches; edging has none."""
    wide = (part for part in found.parts if part.width is not None and not part.is_edging)
    return total(rational(each.length) * rational(each.width) * each.count for each in wide)


def label_of(answer, item=None):
    """How an answer is called behind its line's name: its label, with a number in a list."""
    return answer.label if item is None else f"{answer.label} {item}"


def linkable_answers(reckoner, found):
    """(answer, number in its list or None, value) of each that a name can stand for.

    An item of a list comes with an answer of kind "length".
    """
    for answer in reckoner.answers:
        value = found.answers.get(answer.key)
        if value is None or answer.kind not in _POWERS:
            continue
        if answer.kind == "lengths":
            single = replace(answer, kind="length")
            yield from ((single, at, each) for at, (_, each) in enumerate(value, 1))
        else:
            yield answer, None, value


def named(reckoner, found, label):
    """The `Named` of an answer by its label, of now or of before, any case; "" is the main one,
    and `AREA` one face of its parts.

    Refusals: "unknown" for a label that is none, or that this case does not have, or that is words.
    """
    if not label:
        main = _alone(reckoner) or main_answer(reckoner, found)
        return _number(main, found.answers[main.key])
    if label == AREA.casefold():
        return _area(found)
    answer, number = called(reckoner, found, label)
    value = found.answers.get(answer.key)
    return _number(answer, value if number is None else value[number - 1][1])


def _area(found):
    area = area_of_parts(found)
    if not area:
        raise _unknown(AREA, "isn’t one of its answers")
    return Named(area, SQUARE)


def called(reckoner, found, label):
    """(the `Answer` that has a label, of now or of before; its number in a list or None).

    Refusals: "unknown" for a label that is none, or a number that its list does not have.
    """
    by_key = {answer.key: answer for answer in reckoner.answers}
    now = [(answer.label.casefold(), answer.key) for answer in reckoner.answers]
    labels = (*now, *OLD_LABELS.get(reckoner.key, ()))
    for name, key in sorted(labels, key=lambda each: each[1] not in found.answers):
        answer = by_key[key]
        if name == label:
            return answer, None
        listed = found.answers.get(key) or ()
        number = _number_in(label, name, listed) if answer.kind == "lengths" else None
        if number is not None:
            return answer, number
    raise _unknown(label, "isn’t one of its answers")


def _alone(reckoner):
    """The answer that its name alone keeps standing for, or None where that is the main one."""
    key = ALONE.get(reckoner.key)
    return next((each for each in reckoner.answers if each.key == key), None)


def _number_in(label, name, values):
    """The number behind the name of a list; None where the label is another one."""
    before, _, number = label.rpartition(" ")
    if before != name or not number.isdecimal() or len(number) > 4:
        return None
    if not 1 <= int(number) <= len(values):
        raise _unknown(label, "isn’t one of its answers now")
    return int(number)


def _number(answer, value):
    if answer.kind not in _POWERS:
        raise _unknown(answer.label, "is in words, not a number")
    if value is None:
        raise _unknown(answer.label, "isn’t one of its answers now")
    if isinstance(value, list):
        raise Refusal(
            "unknown",
            f"{quoted(answer.label)} is a list, but this needs one number.",
            f"After the name, put a colon and the one you mean: “: {label_of(answer, 1)}”.",
        )
    power, kind = _POWERS[answer.kind], answer.kind
    return Named(rational(value), power, kind == "angle", weight=kind == "weight")


def rational(value):
    """An exact value as a fraction, within 2**-`BITS` where it is irrational.

    So is one whose fraction has hundreds of digits: it would only get longer from line to line.
    """
    value = exact_of(value)
    if isinstance(value, Real) or not is_bounded(value):
        low, high = enclosed(value, BITS)
        return Fraction(low + high, 2 << BITS)
    return value if isinstance(value, Fraction) else Fraction(value)


def total(values):
    """The sum of exact values as a fraction, as exact as `rational` makes it."""
    made = Fraction(0)
    for value in values:
        made = rational(made + value)
    return made


def difference(was, now):
    """How much more an exact value is than another was, as finely as anything is told.

    An irrational difference that can't be told from a simple fraction within `_NARROW`, some 16
    decimals, is that one, 0 too: to compare what did not change to the last bit takes seconds.
    """
    by = exact_of(now) - exact_of(was)
    if not isinstance(by, Real):
        return by
    for bits in (FIRST_BITS, 2 * FIRST_BITS):
        low, high = (Fraction(end, 1 << bits) for end in by.enclosure(bits))
        if high - low <= _NARROW:
            simplest = simplest_between(low, high)
            return simplest if simplest.denominator <= _SIMPLE else by
    return by


def _unknown(label, what):
    return Refusal("unknown", f"{quoted(label)} {what}.", "Choose another answer from that line.")
