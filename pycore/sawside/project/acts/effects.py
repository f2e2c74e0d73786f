"""What a change does to the other entries: each number before, after, and by how much."""

from sawside.lengths.display import decimal_text
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.marks import Rounded
from sawside.lengths.real import Real, sign
from sawside.lengths.show import Show, angle_text
from sawside.lengths.units import MILE
from sawside.project.acts.told_apart import are_alike, is_nothing, main_apart, other_apart
from sawside.project.evaluation.numbers import UNITS
from sawside.reckoners.declaration import Answer
from sawside.reckoning.answers import length_told, told
from sawside.reckoning.links import difference

_DIFFERENCE = "difference", "Difference"


def effects(before, after, but):
    """Every entry but one whose numbers are not what they were, in the order of the links."""
    told_of = []
    for identity in after.graph.links.order:
        old, new = before.worked.get(identity), after.worked[identity]
        if old is None or old is new or identity == but:
            continue
        told_of += _follow(after, identity, old, new)
    return told_of


def _follow(after, identity, old, new):
    entry = {
        "id": identity,
        "name": after.names[identity],
        "ok": new.ok,
        "error": None,
        "label": "",
        "before": None,
        "after": None,
        "difference": None,
        "others": [],
    }
    if not new.ok:
        entry["error"] = new.refusals[0].as_data()
    if old.ok:
        entry["before"] = old.headline
    if new.ok:
        entry["after"] = new.headline
        entry["label"] = new.headline["label"]
    if old.ok and new.ok:
        changed = [*_changes(old, new)]
        if not changed:
            return []
        others = (
            other_apart(_other(old, new, *change), *change, new.show)
            for change in changed
            if change[0] is not None
        )
        entry["others"] = [each for each in others if each]
        entry["before"], entry["after"] = _main_apart(old, new)
        if not are_alike(entry["before"], entry["after"]):
            by = _main_difference(old, new)
            entry["difference"] = None if by and is_nothing(by["text"]) else by
        elif not entry["others"]:
            return []
    elif not old.ok and not new.ok:
        return []
    return [entry]


def _main_apart(old, new):
    """The headlines of an entry before and after, so finely that they differ if they can."""
    if not hasattr(new, "found"):
        was, now = (each.named("") for each in (old, new))
        if was.power != 1 or now.power != 1:
            return old.headline, new.headline
        show = Show(new.settings)
        return main_apart(old.headline, new.headline, was.value, now.value, show)
    key = new.reckoner.answers[0].key
    was, now = (each.found.answers[key] for each in (old, new))
    return main_apart(old.headline, new.headline, was, now, new.show)


def _changes(old, new):
    """(answer or None for the first, its old and its new value) of each that changed."""
    if not hasattr(new, "found"):
        if old.named("") != new.named("") or old.headline != new.headline:
            yield None, None, None
        return
    for at, answer in enumerate(new.reckoner.answers):
        was = old.found.answers.get(answer.key)
        now = new.found.answers.get(answer.key)
        if not _same(was, now) or _brief(answer, was, old) != _brief(answer, now, new):
            yield (answer if at else None), was, now


def _same(was, now):
    if isinstance(was, list) and isinstance(now, list):
        return len(was) == len(now) and all(
            a[0] == b[0] and _same(a[1], b[1]) for a, b in zip(was, now, strict=True)
        )
    if isinstance(was, Rounded) and isinstance(now, Rounded):
        return _same(was.exact, now.exact) and was.grid == now.grid
    if isinstance(was, Real) and isinstance(now, Real):
        return difference(was, now) == 0
    return type(was) is type(now) and was == now


def _other(old, new, answer, was, now):
    """An answer that is not the first, in a few words, each as its own settings show it."""
    by = ""
    if answer.kind in ("length", "angle") and was is not None and now is not None:
        by = _signed(difference(was, now), answer.kind, new.show)
    return {
        "key": answer.key,
        "label": answer.label,
        "before": _brief(answer, was, old),
        "after": _brief(answer, now, new),
        "difference": by,
    }


def _brief(answer, value, worked):
    return "none" if value is None else _in_brief(answer, value, worked.show)


def _in_brief(answer, value, show):
    if answer.kind == "length":
        return show.brief(value, answer.rounding)
    if answer.kind == "lengths":
        return ", ".join(show.brief(each, answer.rounding) for _, each in value)
    return angle_text(value) if answer.kind == "angle" else str(value)


def _signed(by, kind, show):
    text = show.brief(by) if kind == "length" else angle_text(by)
    if sign(by) >= 0:
        text = f"≈ +{text[2:]}" if text.startswith("≈ ") else f"+{text}"
    return text


def _main_difference(old, new):
    """After less before of the first answer, as a VALUE; None where that says nothing."""
    if not hasattr(new, "found"):
        was, now = old.named(""), new.named("")
        if was.power != now.power:
            return None
        by = now.value - was.value
        if now.power != 1:
            return _number_told(by, now.power)
        return _length_told(by, Show(new.settings))
    answer = new.reckoner.answers[0]
    if answer.kind not in ("length", "angle", "count"):
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
