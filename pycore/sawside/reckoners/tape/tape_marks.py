"""A length as marks on the tape, and marks on the tape as a length."""

from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.fields import choice, count, length
from sawside.reckoners.tape.shared.counted_from_a_mark import LARGER, counted_from_a_mark
from sawside.reckoners.tape.shared.counted_to_a_mark import counted_to_a_mark
from sawside.reckoners.tape.shared.tape_marks import divisions

_MARK, _LENGTH = ({"shown_when": ("solve", (solve,))} for solve in ("mark", "length"))
_SOLVERS = {"mark": counted_to_a_mark, "length": counted_from_a_mark}


def compute(given, show):
    """By what is asked: the mark of a length, or the length at a mark."""
    return _SOLVERS[given.solve](given, show)


RECKONER = Reckoner(
    key="tape_marks",
    title="Tape marks",
    asks="Where is this length on my tape, or what does this mark read?",
    words=(
        "read a tape, tape measure, find on a tape measure, count marks, marks, lines, call out, "
        "sixteenths, eighths, fraction, measure, ruler, rule, short of"
    ),
    order=100,
    job="tape",
    picture={
        "wood": "M3 12h34v16H3z",
        "ink": "M7 12v9M11.5 12v4M16 12v6M25 12v9M29.5 12v4M34 12v6",
        "chalk": "M20.5 2v14m-3-7l3 3 3-3",
    },
    fields=(
        choice("solve", "Find", {"mark": "Mark", "length": "Length"}),
        length("length", "Length", help="A fraction, a decimal or millimeters.", **_MARK),
        choice(
            "division",
            "Smallest marks",
            {"settings": "From Settings"} | divisions(2, 4, 8, 16, 32, 64) | {"mm": "Millimeters"},
            **_MARK,
        ),
        count(
            "inches",
            "Numbered inch",
            help="The inch number you count from.",
            most="1200",
            in_short="inch {}",
            **_LENGTH,
        ),
        choice(
            "larger",
            "Count from",
            LARGER,
            help="Start from the nearest 1/2, 1/4 or 1/8 to count fewer lines.",
            **_LENGTH,
        ),
        count("marks", "Lines counted", help="From there to your spot.", most="64", **_LENGTH),
        choice("side", "Your spot", {"past": "Past it", "short": "Short of it"}, **_LENGTH),
        choice(
            "smallest",
            "Tape’s smallest marks",
            divisions(16, 2, 4, 8, 32, 64),
            help="Not sure? Count the spaces in one inch.",
            **_LENGTH,
        ),
    ),
    answers=(
        Answer("mark", "On the tape", must="agree"),
        Answer("way", "Counted from the nearest larger mark", "text"),
        Answer("from_inch", "Counted from the inch", "text"),
        Answer("length", "Length", must="agree"),
        Answer("how", "How to find it", "text"),
    ),
    source=(
        "Counting: inches + larger mark ± marks × the division, from the nearest larger mark. "
        "Shop practice."
    ),
    compute=compute,
    example={
        "solve": "mark",
        "length": "29 3/4",
        "division": "settings",
        "inches": "14",
        "larger": "5/8",
        "marks": "2",
        "side": "past",
        "smallest": "16",
    },
    basic=("solve", "length", "inches", "larger", "marks", "side"),
)
