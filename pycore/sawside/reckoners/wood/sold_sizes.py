"""What wood measures that is sold by a nominal size: softwood, hardwood, structural plywood."""

import re

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice, length
from sawside.reckoners.shared.panel_fields import limits_text, outside
from sawside.wood.numbers import size_text
from sawside.wood.sold_sizes import HARDWOOD, PLYWOOD, SHEETS, SOFTWOOD_THICK, SOFTWOOD_WIDE

_SURFACED = {"two_sides": "surfaced on two sides", "one_side": "surfaced on one side"}


def compute(given, show):
    """The sizes in inches as they are printed, and what a measured thickness is beside them."""
    sizes = _sizes(given)
    if not sizes:
        raise Refusal(
            "unknown",
            f"There’s no thickness on file for {HARDWOOD[given.quarters].name} "
            f"{_SURFACED[given.surfaced]}.",
            "Pick the other surfacing.",
            field="surfaced",
        )
    told = {name: value for name, value, _ in sizes}
    answers = {
        "sizes": [(name, on_fine_marks(value, show)) for name, value in told.items()],
        "where": " ".join(dict.fromkeys(f"{size.cited}." for _, _, size in sizes)),
    }
    if given.measured is not None:
        answers["verdict"] = _verdict(given, show, told)
    return Reckoning(
        answers=answers,
        working=tuple(f"{name}: {size_text(value, show)}" for name, value in told.items()),
        verdict=": ".join(filter(None, (_in_short(answers), _both(given, show, answers["sizes"])))),
    )


def _in_short(answers):
    """What a measured thickness is, in its first words; "" where none was given."""
    return re.split(r"[,.] |\.$", answers.get("verdict", ""))[0]


def _both(given, show, sizes):
    """Both sizes as one says them, a range or thickness by width; "" where there is one."""
    told = [show.brief(size) for _, size in sizes]
    if len(told) == 1:
        return ""
    return f"{told[0]} to {told[1]} thick" if given.wood == "plywood" else " × ".join(told)


def _sizes(given):
    """(name, inches, the row) of each size that is on file."""
    if given.wood == "plywood":
        size = PLYWOOD[given.category]
        rows = [("Thickness, at least", size, "least"), ("Thickness, at most", size, "most")]
    elif given.wood == "softwood":
        thick, wide = SOFTWOOD_THICK[given.thick], SOFTWOOD_WIDE[given.wide]
        rows = [("Thickness", thick, given.state), ("Width", wide, given.state)]
    elif given.wood == "sheet":
        rows = [("Thickness, usually", SHEETS[given.sheet], "usual")]
    else:
        rows = [("Thickness", HARDWOOD[given.quarters], given.surfaced)]
    return [
        (name, size.figures[column], size)
        for name, size, column in rows
        if size.figures[column] is not None
    ]


def _verdict(given, show, told):
    text = fine_text(given.measured, show)
    if given.wood == "plywood":
        size = PLYWOOD[given.category]
        is_ = "outside" if outside(size, given.measured) else "within"
        return f"{text} is {is_} the PS 1 limits, {limits_text(size, show)}."
    off = given.measured - next(iter(told.values()))
    usual = "the usual size" if given.wood == "sheet" else "the standard"
    if off == 0:
        return f"{text} matches {usual}."
    way = "thicker" if off > 0 else "thinner"
    return f"{text} is {fine_text(abs(off), show)} {way} than {usual}. Cut to what you measured."


def _of(wood, key, label, sizes, usual):
    """The choice of a size where `wood` is what is sold."""
    names = {name: size.name for name, size in sizes.items()}
    return choice(key, label, names, default=usual, shown_when=("wood", (wood,)))


RECKONER = Reckoner(
    key="sold_sizes",
    title="Sizes as sold",
    asks="What does nominal lumber or plywood really measure?",
    words=(
        "plywood, plywood thickness, 1/4 plywood, 1/2 plywood, 3/4 plywood, nominal size, "
        "nominal, actual size, dressed, surfaced, lumber, board, 1x2, 1x3, 1x4, 1x6, 1x8, 1x10, "
        "1x12, 2x2, 2x4, 2x6, 2x8, 2x10, 2x12, 4x4, 4/4, 5/4, 6/4, 8/4, one by four, two by "
        "four, stock, sold as"
    ),
    order=412,
    job="tables",
    picture={
        "wood": "M9 13h20v22H9z",
        "ink": "M5 9h28v26",
        "chalk": "M9 5h20m-3-3l3 3-3 3M12 2l-3 3 3 3",
    },
    fields=(
        choice(
            "wood",
            "Sold as",
            {
                "softwood": "Softwood boards",
                "hardwood": "Hardwood boards",
                "plywood": "Structural plywood",
                "sheet": "Hardwood plywood",
            },
        ),
        _of("softwood", "thick", "Nominal thickness", SOFTWOOD_THICK, "thickness_1"),
        _of("softwood", "wide", "Nominal width", SOFTWOOD_WIDE, "width_6"),
        choice(
            "state",
            "Dressed",
            {"dry": "Dry, 19% or less", "green": "Green"},
            shown_when=("wood", ("softwood",)),
        ),
        _of("hardwood", "quarters", "Rough thickness", HARDWOOD, "thickness_4_4"),
        choice(
            "surfaced",
            "Surfaced",
            {"two_sides": "Two sides", "one_side": "One side"},
            shown_when=("wood", ("hardwood",)),
        ),
        _of("plywood", "category", "Panel size", PLYWOOD, "ps1_23_32"),
        _of("sheet", "sheet", "Panel size", SHEETS, "plywood_3_4"),
        length(
            "measured",
            "Measured size",
            in_short="{} measured",
            help="The thickness.",
            most="12 in",
            blank_means="Just the listed size.",
        ),
    ),
    answers=(
        Answer("sizes", "Actual size", "lengths", must="agree"),
        Answer("verdict", "Measured size", "text"),
        Answer("where", "Source", "text"),
    ),
    source=(
        "Softwood: NIST PS 20, least dressed sizes. Structural plywood: NIST PS 1, limits by "
        "performance category. Hardwood: NHLA, usual thickness. "
        "Hardwood plywood: shop practice. MDF isn’t on file."
    ),
    compute=compute,
    example={"wood": "plywood", "category": "ps1_23_32", "measured": "45/64"},
)
