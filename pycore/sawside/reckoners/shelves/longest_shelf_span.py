"""How far apart the supports of a shelf may be for its sag to stay within a limit."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.shelves.shared.shelf_answers import ANSWERS, SOURCE, told
from sawside.reckoners.shelves.shared.shelf_case import shelf_case
from sawside.reckoners.shelves.shared.shelf_fields import shelf_fields

_LEAST, _MOST = Fraction(1), Fraction(240)


def compute(given, show):
    """The longest span in inches, on the last mark that keeps within the limit."""
    case = shelf_case(given, span=_LEAST)
    exact = case.shelf.solved("span", case.excess, _LEAST, _MOST)
    if exact is None:
        raise _never(case.excess(case.shelf) > 0, show)
    span = show.rounded(exact, "stay under")
    shelf = case.shelf.changed(span=span.mark or span.exact)
    sag = "long-term sag" if given.judged == "years" else "sag now"
    line = f"The {sag} reaches the limit at a span of {show.number(exact)} → {show.text(span)}"
    return told(case, shelf, show, answers={"span": span}, working=(line,))


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


RECKONER = Reckoner(
    key="longest_shelf_span",
    title="Longest shelf span",
    asks="How far can a shelf span?",
    words=(
        "maximum span, max span, span, how wide, how far apart, longest, support, bay, shelf, "
        "sag, load, bookcase"
    ),
    order=321,
    job="shelf strength",
    picture={
        "wood": "M3 10h34v5H3zM4 15h4v21H4zM32 15h4v21h-4z",
        "chalk": "M8 25h24m-3-3l3 3-3 3M11 22l-3 3 3 3",
    },
    fields=shelf_fields(without="span", overhang=False),
    answers=(Answer("span", "Longest span", must="stay under"), *ANSWERS),
    source=SOURCE,
    compute=compute,
    example={"depth": "13 1/4", "thickness": "23/32", "material": "plywood", "load": "records_12"},
)
