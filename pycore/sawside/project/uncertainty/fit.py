"""Whether the clearance of a question covers what its number may be off by."""

from typing import Any, NamedTuple

from sawside.project.evaluation.numbers import Fine, Number, numbers
from sawside.project.uncertainty.uncertainty import Uncertainty
from sawside.reckoners.declaration import Fit
from sawside.reckoning.answers import length_told


def fit_told(moved):
    """The tightest of the fits that a line's question declares, as `sure` tells it; None without.

    A fit is left out where it has no range: what is told of the number itself says why.
    """
    worked = moved.worked
    if worked.reckoner is None or not moved.readings:
        return None
    fits = [each for fit in worked.reckoner.fits for each in _each(fit, moved)]
    return _told(min(fits, key=lambda each: each.total - each.tighter), worked) if fits else None


class _Tried(NamedTuple):
    """A fit of one number: `total` of its clearance, and by how much it may be `tighter`."""

    fit: Fit
    number: Number
    key: str
    total: Any
    tighter: Any


def _each(fit, moved):
    """A fit tried with each number that it is about."""
    worked = moved.worked
    clearance = fit.clearance(worked.form.given)
    if clearance is None:
        return
    for number in numbers(worked).values():
        if number.key.partition(".")[0] == fit.answer:
            doubt = Uncertainty(number, moved)
            if doubt.limit is None:
                tighter = doubt.high if fit.tight_when == "more" else -doubt.low
                yield _Tried(fit, number, *clearance, tighter)


def _told(tried, worked):
    fit, number, key, total, tighter = tried
    field = next(each for each in worked.reckoner.fields if each.key == key)
    fine = Fine(number, worked.settings)
    covers = total >= tighter
    verdict = "isn’t enough for that"
    if covers:
        verdict = "covers it" if total > tighter else "just covers it, with nothing to spare"
    return {
        "field": key,
        "label": field.label,
        "answer": number.key,
        "clearance": length_told("clearance", field.label, total, worked.show),
        "covers": covers,
        "said": f"{number.label} may need to be up to {fine.text(tighter)} {fit.tight_when}; the "
        f"total clearance of {fine.text(total)} {verdict}."
        if tighter
        else f"No reading makes it tighter: you keep the full clearance of {fine.text(total)}.",
    }
