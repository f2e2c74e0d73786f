"""Whether a shelf keeps its limit, in a few words, and what the eye makes of it."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.fine import fine_grid, fine_text
from sawside.wood.numbers import metric, size_text
from sawside.wood.strength.sag_limits import seen

_FAR = Fraction(1, 20)
"""A sag of this part of the span is past what the theory holds for, and what anybody wants."""


def verdict_text(case, shelf, show):
    """ "Fine: 1/32″ long-term (1/64″ now), limit 1/16″", or "Too much" likewise.

    What is judged and its limit are told so finely that the two differ.
    """
    sag, most = shelf.sag * case.factor, case.limit(shelf)
    if broken := _past_its_strength(case, shelf):
        return f"It could break: past the strength of {broken.spoken}"
    if sag > shelf.span * _FAR and sag > most:
        return f"Far too weak: it would sag over 1/20 of its span, limit {_short(most, show)}"
    step = fine_grid(show.settings).step
    if sag <= most and sag < step:
        limit = f", limit {_short(most, show)}" if most >= step else ""
        return f"Fine: under {_short(step, show)} {_times(case, shelf, show)}{limit}"
    figures = [_short(each, show) for each in (sag, most)]
    if figures[0] == figures[1] and sag != most:
        figures = [size_text(each, show) for each in (sag, most)]
    found = "Too much" if case.excess(shelf) > 0 else "Fine"
    return f"{found}: {figures[0]} {_times(case, shelf, show)}, limit {figures[1]}"


def _times(case, shelf, show):
    """When it is judged, and what it sags now where that is at another time."""
    now = f" ({_short(shelf.sag, show)} now)" if case.given.judged == "years" else ""
    return f"{_when(case, shelf)}{now}"


def _past_its_strength(case, shelf):
    """What is bent past its strength, or None."""
    for (_, made_of), stress in zip(case.materials, shelf.stresses, strict=False):
        if made_of.strength and stress >= made_of.strength.least:
            return made_of
    return None


def refuse_what_breaks(case, shelf):
    """Refuse a shelf that keeps its sag limit and breaks before that."""
    if broken := _past_its_strength(case, shelf):
        raise Refusal(
            "impossible",
            f"Before it sags that far it could break: past the strength of {broken.spoken}.",
            "Use a smaller sag limit.",
            field="own_limit" if case.given.limit == "own" else "limit",
        )


def solved_verdict(case, shelf, show, found):
    """What was worked out, `found` in words, and what the shelf then sags."""
    return f"{found}: {_short(shelf.sag * case.factor, show)} {_when(case, shelf)}"


def _when(case, shelf):
    when = "long-term" if case.given.judged == "years" else "now"
    return f"{when} between the edges" if between(shelf) else when


def _short(length, show):
    """On fine marks; that it was rounded is told beside the sag itself."""
    return fine_text(length, show).removeprefix("≈ ")


def eye_text(case, shelf, show):
    """What the eye makes of the sag after years."""
    good, loose, each = ("0.02″", "1/32″", "per foot")
    if metric(show):
        good, loose, each = ("1.7 mm", "2.6 mm", "per meter")
    said = {
        "not": f"Probably not: {good} {each} or less",
        "perhaps": f"A sharp eye will: between {good} and {loose} {each}",
        "yes": f"Yes: more than {loose} {each}",
    }[seen(shelf.sag * case.creep, shelf.span)]
    return f"{said}, long-term (shop practice)."


def lowest(shelf):
    """(the ends: 0 in the middle of the span, else 1; "front", "back", or None between them)."""
    across = len(shelf.plate.places) if shelf.plate else 1
    drops = shelf.drops
    ends, station = divmod(drops.index(max(drops)), across)
    return ends, {0: "front", across - 1: "back"}.get(station)


def between(shelf):
    """Whether a shelf that has strips is lowest between its edges."""
    return shelf.plate is not None and lowest(shelf)[1] is None
