"""How much may stand on a shelf for its sag to stay within a limit."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.shared.shelf_answers import ANSWERS, SOURCE, load_told, told
from sawside.reckoners.shared.shelf_fields import case_of, shelf_fields
from sawside.wood.numbers import number_text
from sawside.wood.shelf import Load

_TENTH = Fraction(1, 10)


def compute(given, show):
    """The heaviest load, down to a tenth of a pound: sag grows as the load does."""
    case = case_of(given, load=Load("whole", Fraction(1)))
    factor = case.creep if given.judged == "years" else 1
    most, each = case.limit(case.shelf), case.shelf.sag * factor
    pounds = most / each // _TENTH * _TENTH
    if not pounds:
        raise Refusal(
            "impossible",
            f"It sags more than the limit under {number_text(_TENTH, 1)} lb already.",
            "Give a shorter span or a thicker board.",
            field="span",
        )
    shelf = case.shelf.changed(load=Load("whole", pounds))
    line = (
        f"One pound sags it {number_text(each, 6)}″, and {number_text(most, 4)}″ is the most: "
        f"{number_text(most, 4)} ÷ {number_text(each, 6)} → {number_text(pounds, 1)} lb in all"
    )
    return told(case, shelf, show, answers={"heaviest": load_told(shelf)}, working=(line,))


RECKONER = Reckoner(
    key="heaviest_shelf_load",
    title="Heaviest shelf load",
    asks="How much weight may stand on a shelf before it sags too much?",
    words=("load", "weight", "heaviest", "shelf", "sag", "how much", "hold", "carry", "books"),
    order=323,
    fields=shelf_fields(without="load"),
    answers=(Answer("heaviest", "Heaviest load", "text"), *ANSWERS),
    source=SOURCE,
    compute=compute,
    example={"span": "31 5/8", "depth": "13 1/4", "thickness": "23/32", "material": "plywood"},
)
