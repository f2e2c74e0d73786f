"""How far apart the supports of a shelf may be for its sag to stay within a limit."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.display import mark_text
from sawside.reckoners.shelves.shared.strength.answers import told
from sawside.reckoners.shelves.shared.strength.case import shelf_case

_LEAST, _MOST = Fraction(1), Fraction(240)


def longest_span(given, show):
    """The longest span in inches, on the last mark that keeps within the limit."""
    if given.supports == "overhanging":
        raise Refusal(
            "conflict",
            "Sawside can’t find the longest span of a shelf that overhangs its supports.",
            "Pick other ends, or enter the span and find something else.",
            field="supports",
        )
    case = shelf_case(given, span=_LEAST)
    exact = case.shelf.solved("span", case.excess, _LEAST, _MOST)
    if exact is None:
        raise _never(case.excess(case.shelf) > 0, show)
    span = show.rounded(exact, "stay under")
    shelf = case.shelf.changed(span=span.mark or span.exact)
    sag = "long-term sag" if given.judged == "years" else "sag now"
    line = f"The {sag} reaches the limit at a span of {show.number(exact)} → {show.text(span)}"
    found = f"Span up to {mark_text(span, show.settings.display)}"
    return told(case, shelf, show, solved={"span": span}, working=(line,), found=found)


def _never(too_much, show):
    if too_much:
        message = f"Even a span of {show.text(_LEAST)} sags past the limit."
        return Refusal("impossible", message, "Use a lighter load or a bigger limit.", field="load")
    return Refusal(
        "impossible",
        f"Even a span of {show.text(_MOST)}, the longest Sawside figures, stays within the limit.",
        "Enter a smaller limit or a thinner board.",
        field="limit",
    )
