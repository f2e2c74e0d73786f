"""Two numbers of which one became the other, told finely enough to be told apart.

48″ → 48″ (−1/16″) says nothing: then both are told on finer marks, and what is alike even there has
not changed for anybody who measures it.
"""

from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.marks import exact_of
from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.reckoning.answers import length_told
from sawside.reckoning.links import difference

_HUNDREDTHS = 2


def other_apart(other, answer, was, now, show):
    """What is told of an answer in brief ({"before", "after", "difference", …}) with numbers that
    differ; None where nobody would see a change. `was` and `now` are what `compute` gave."""
    alike = _same(other["before"], other["after"])
    if None in (was, now) or answer.kind not in _FINE:
        return None if alike else other
    fine = _FINE[answer.kind]
    before, after = fine(was, show), fine(now, show)
    if alike and _same(before, after):
        return None
    told = {"before": before, "after": after} if alike else {}
    if other["difference"] and (alike or is_nothing(other["difference"])):
        by = difference(was, now)
        text = fine(abs(by), show)
        told["difference"] = "" if is_nothing(text) else _signed("+" if sign(by) > 0 else "−", text)
    return other | told


def main_apart(before, after, was, now, show):
    """The first answers of an entry as VALUEs that differ; the same two where nobody would see it.

    `was` and `now` are what `compute` gave.
    """
    if not _same(before["text"], after["text"]):
        return before, after
    kind = after["kind"] if before["kind"] == after["kind"] else None
    if kind == "length":
        return tuple(
            length_told(told["key"], told["label"], on_fine_marks(exact_of(value), show), show)
            for told, value in ((before, was), (after, now))
        )
    if kind == "angle":
        return tuple(told | {"text": told["hundredth"]} for told in (before, after))
    return before, after


def are_alike(before, after):
    """Whether two VALUEs tell the same."""
    return _same(before["text"], after["text"])


def _same(one, other):
    return one.replace("≈ ", "") == other.replace("≈ ", "")


def _signed(way, text):
    return f"≈ {way}{text[2:]}" if text.startswith("≈ ") else f"{way}{text}"


def is_nothing(text):
    """Whether a difference is told as 0: too small even for the finest marks."""
    return not any(digit in text for digit in "123456789")


def _length(value, show):
    exact = exact_of(value)
    text = fine_text(abs(exact), show)
    return _signed("−", text) if sign(exact) < 0 else text


def _lengths(values, show):
    return ", ".join(_length(each, show) for _, each in values)


def _angle(value, _show):
    return angle_text(exact_of(value), _HUNDREDTHS)


_FINE = {"length": _length, "lengths": _lengths, "angle": _angle}
