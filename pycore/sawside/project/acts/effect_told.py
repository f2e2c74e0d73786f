"""A number of an entry told before and after a change, finely enough to be told apart.

48″ → 48″ (−1/16″) says nothing: then both are told on finer marks, and what is alike even there has
not changed for anybody who measures it.
"""

from sawside.lengths.display import decimal_text
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.marks import exact_of
from sawside.lengths.real import sign
from sawside.lengths.show import Show, angle_text
from sawside.lengths.units import MILE
from sawside.project.evaluation.numbers import UNITS
from sawside.reckoners.declaration import Answer
from sawside.reckoning.answers import length_told, told
from sawside.reckoning.links import difference

_DIFFERENCE = "difference", "Difference"


def first_apart(old, new):
    """The first answers of an entry as VALUEs that differ; the same two where nobody sees it."""
    before, after = old.headline, new.headline
    same = before["key"] == after["key"] and before["kind"] == after["kind"]
    if not same or not are_alike(before, after):
        return before, after
    if after["kind"] != "length":
        return before, after
    was, now, show = _first_values(old, new)
    return tuple(
        length_told(each["key"], each["label"], on_fine_marks(exact_of(value), show), show)
        for each, value in ((before, was), (after, now))
    )


def _first_values(old, new):
    """(the first answer before, after, and the `Show` of it now)."""
    if new.reckoner is None:
        return old.named("").value, new.named("").value, Show(new.settings)
    return old.found.answers[new.main.key], new.found.answers[new.main.key], new.show


def first_difference(old, new):
    """After less before of the first answer, as a VALUE; None where that says nothing."""
    by = _sum_difference(old, new) if new.reckoner is None else _line_difference(old, new)
    return None if by is None or _is_nothing(by["text"]) else by


def _sum_difference(old, new):
    was, now = old.named(""), new.named("")
    if was.power != now.power:
        return None
    by = now.value - was.value
    return _length_told(by, Show(new.settings)) if now.power == 1 else _number_told(by, now.power)


def _line_difference(old, new):
    answer = new.main
    if answer is not old.main or answer.kind not in ("length", "angle", "count"):
        return None
    by = difference(old.found.answers[answer.key], new.found.answers[answer.key])
    if answer.kind == "length":
        return _length_told(by, new.show)
    return told(Answer(*_DIFFERENCE, answer.kind), by, new.show)


def _length_told(by, show):
    """A difference of lengths; None where it is longer than a mile, which is told by both."""
    if abs(by) > MILE:
        return None
    fine = on_fine_marks(by, show) if show.mark(by) == 0 else by
    return length_told(*_DIFFERENCE, fine, show)


def _number_told(by, power):
    """A difference of numbers that are no lengths: of areas, volumes, or one by another."""
    text = f"{decimal_text(by, 3)}{UNITS[power]}"
    key, label = _DIFFERENCE
    return {"key": key, "label": label, "kind": "number", "text": text, "words": text}


def other_apart(answer, was, now, old, new):
    """An answer that is not the first, in a few words with numbers that differ, each as its own
    settings show it; None where nobody would see a change.

    `was` and `now` are what `compute` gave, None where it gave nothing.
    """
    before, after = old.brief(answer), new.brief(answer)
    alike = _same(before, after)
    fine = None if was is None or now is None else _FINE.get(answer.kind)
    if alike:
        if fine is None:
            return None
        before, after = fine(was, new.show), fine(now, new.show)
        if _same(before, after):
            return None
    by = ""
    if fine is not None and answer.kind != "lengths":
        by = _other_difference(difference(was, now), answer.kind, new.show, alike)
    told = {"key": answer.key, "label": answer.label}
    return told | {"before": before, "after": after, "difference": by}


def _other_difference(by, kind, show, alike):
    """A difference in brief with its sign; on finer marks where it would be 0, or both are so."""
    way = "+" if sign(by) >= 0 else ""
    text = _signed(way, show.brief(by) if kind == "length" else angle_text(by))
    if not alike and not _is_nothing(text):
        return text
    text = _FINE[kind](abs(by), show)
    return "" if _is_nothing(text) else _signed("+" if sign(by) > 0 else "−", text)


def are_alike(before, after):
    """Whether two VALUEs tell the same."""
    return _same(before["text"], after["text"])


def _same(one, other):
    return one.replace("≈ ", "") == other.replace("≈ ", "")


def _signed(way, text):
    return f"≈ {way}{text[2:]}" if text.startswith("≈ ") else f"{way}{text}"


def _is_nothing(text):
    """Whether a difference is told as 0: too small even for the finest marks."""
    return not any(digit in text for digit in "123456789")


def _length(value, show):
    exact = exact_of(value)
    text = fine_text(abs(exact), show)
    return _signed("−", text) if sign(exact) < 0 else text


def _lengths(values, show):
    return ", ".join(_length(each, show) for _, each in values)


def _angle(value, _show):
    return angle_text(exact_of(value))


_FINE = {"length": _length, "lengths": _lengths, "angle": _angle}
