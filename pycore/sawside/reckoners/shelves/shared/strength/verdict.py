"""Whether a shelf keeps its limit, in a few words, and what the eye makes of it."""

from sawside.errors import Refusal
from sawside.lengths.fine import fine_grid, fine_text
from sawside.reckoners.shelves.shared.strength.margin import (
    PAST_THEORY,
    may_be_too_weak,
    near_its_strength,
    past_its_strength,
)
from sawside.wood.numbers import metric, size_text
from sawside.wood.strength.sag_limits import seen


def verdict_text(case, shelf, show):
    """ "Fine: 1/32″ long-term (1/64″ now), limit 1/16″", or "Too much" likewise.

    Within a limit of one's own it may be near breaking, which is not called fine.
    What is judged and its limit are told so finely that the two differ.
    """
    sag, most = shelf.sag * case.factor, case.limit(shelf)
    if broken := past_its_strength(case, shelf):
        return f"It could break: past the strength of {broken.spoken}"
    if sag > shelf.span * PAST_THEORY:
        limit = f", limit {_short(most, show)}" if sag > most else ""
        return f"Far too weak: it would sag over 1/20 of its span{limit}"
    if sag <= most and (near := near_its_strength(case, shelf)):
        return "Close to breaking: {} fails at {} times this".format(*near)
    step = fine_grid(show.settings).step
    fine = "Strength unknown" if may_be_too_weak(case, shelf) else "Fine"
    if sag <= most and sag < step:
        limit = f", limit {_short(most, show)}" if most >= step else ""
        # What sags now may round up to the very mark that it stays under after years.
        is_rounded_up = _short(shelf.sag, show) == _short(step, show)
        when = _when(case, shelf) if is_rounded_up else _times(case, shelf, show, _short)
        return f"{fine}: under {_short(step, show)} {when}{limit}"
    told = size_text if sag != most and _short(sag, show) == _short(most, show) else _short
    found = "Too much" if case.excess(shelf) > 0 else fine
    when = _times(case, shelf, show, told)
    return f"{found}: {told(sag, show)} {when}, limit {told(most, show)}"


def _times(case, shelf, show, told):
    """When it is judged, and what it sags now, `told` so, where that is at another time."""
    now = f" ({told(shelf.sag, show)} now)" if case.given.judged == "years" else ""
    return f"{_when(case, shelf)}{now}"


def refuse_what_breaks(case, shelf):
    """Refuse a shelf that keeps its sag limit and breaks before that, or sags past all theory."""
    said = ""
    if broken := past_its_strength(case, shelf):
        said = f"Before it sags that far it could break: past the strength of {broken.spoken}."
    elif shelf.sag * case.factor > shelf.span * PAST_THEORY:
        said = "That limit is over 1/20 of the span, too far to figure and far too weak."
    if said:
        field = "own_limit" if case.given.limit == "own" else "limit"
        raise Refusal("impossible", said, "Use a smaller sag limit.", field=field)


def solved_verdict(case, shelf, show, found):
    """What was worked out, `found` in words, and what the shelf then sags."""
    near = ", close to breaking" if near_its_strength(case, shelf) else ""
    if may_be_too_weak(case, shelf):
        near = near or ", strength unknown"
    return f"{found}{near}: {_short(shelf.sag * case.factor, show)} {_when(case, shelf)}"


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
