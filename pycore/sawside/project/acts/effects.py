"""What a change does to the other entries: which of their numbers are other ones now.

How a number that changed is told, before and after, is in `effect_told.py`.
"""

from fractions import Fraction

from sawside.lengths.marks import Rounded
from sawside.lengths.real import Real
from sawside.project.acts.effect_told import are_alike, first_apart, first_difference, other_apart
from sawside.project.evaluation.to_fill import to_fill
from sawside.reckoning.links import difference


def effects(before, after, but):
    """Every entry but one whose numbers are not what they were, in the order of the links.

    One that was to be filled in, or rests on the one that is filled in now, had no number that
    anybody went by: what it gets is no change.
    """
    if to_fill(before, but) is not None:
        return []
    told = []
    for identity in after.graph.links.order:
        old, new = before.worked.get(identity), after.worked[identity]
        if old is None or old is new or identity == but:
            continue
        effect = _effect(old, new)
        if effect is not None and to_fill(before, identity) is None:
            told.append({"id": identity, "name": after.names[identity]} | effect)
    return told


def _effect(old, new):
    """What is told of an entry that was worked out again; None where nobody sees a change."""
    if not old.ok and not new.ok:
        return None
    effect = {
        "ok": new.ok,
        "error": None if new.ok else new.refusals[0].as_data(),
        "label": new.headline["label"] if new.ok else "",
        "before": old.headline if old.ok else None,
        "after": new.headline if new.ok else None,
        "difference": None,
        "others": [],
    }
    if not old.ok or not new.ok:
        return effect
    changed = [*_changed(old, new)]
    if not changed:
        return None
    others = (other_apart(answer, was, now, old, new) for answer, was, now in changed if answer)
    effect["others"] = [other for other in others if other]
    effect["before"], effect["after"] = first_apart(old, new)
    if not are_alike(effect["before"], effect["after"]):
        effect["difference"] = first_difference(old, new)
    elif not effect["others"]:
        return None
    return effect


def _changed(old, new):
    """(answer or None for the main one, its old and its new value) of each that changed."""
    if new.reckoner is None:
        if old.named("") != new.named("") or old.headline != new.headline:
            yield None, None, None
        return
    for answer in new.reckoner.answers:
        was = old.found.answers.get(answer.key)
        now = new.found.answers.get(answer.key)
        if not _same(was, now) or _told_otherwise(answer, now, old, new):
            yield (None if answer is new.main else answer), was, now


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


def _told_otherwise(answer, value, old, new):
    """Whether an answer of the same value is told in other words: by other settings, mostly."""
    if isinstance(value, Fraction):  # quicker than telling it twice
        shows = old.show, new.show
        if old.settings is new.settings and not any(each.as_given(value) for each in shows):
            return False
    elif answer.kind in ("angle", "count", "text") and not isinstance(value, Real):
        return False
    return old.brief(answer) != new.brief(answer)
