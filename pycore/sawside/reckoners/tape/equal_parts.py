"""A length divided into equal parts, with nothing, a saw kerf or a gap between them.

part = (whole - (n - 1) x between) / n. Each mark is rounded from its own exact place, so the last
part is as good as the first; stepping off a rounded part adds its error up.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.stick import stick
from sawside.errors import Refusal
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice, count, kerf, length
from sawside.reckoners.shared.numbered import numbered
from sawside.reckoners.shared.stepping_off import STEPPING, stepping

_MOST_PARTS = 200
_MOST_TOLD = 4
_CUT_CAUTION = (
    "The last pieces get too short to hold. Plan those cuts first, keep your hands at least 6″ "
    "from the blade (shop practice), and clamp anything shorter. The saw maker’s instructions "
    "come first."
)


def compute(given, show):
    """Part, marks from one end, and how far apart the parts come out by the marks."""
    whole, parts = given.whole, given.parts
    between = given.kerf or given.gap or 0
    part = (whole - (parts - 1) * between) / parts
    if part <= 0:
        raise Refusal(
            "impossible",
            f"{parts - 1} × {show.text(between)} between the parts fill {show.text(whole)}.",
            "Use fewer parts, or less between them.",
            field="parts",
        )
    begins = [number * (part + between) for number in range(parts)]
    ends = [begin + part for begin in begins]
    named = _marks(begins, ends, given.between)
    sizes = _sizes(begins, ends, between, given.between, show)
    if min(sizes) <= 0:
        raise Refusal(
            "impossible",
            f"Each part is {fine_text(part, show)}, so on these marks some come out to nothing.",
            "Use fewer parts, or choose finer marks in Settings.",
            field="parts",
        )
    difference = max(sizes) - min(sizes)
    return Reckoning(
        answers={
            "part": part,
            "marks": named,
            "difference": on_fine_marks(difference, show),
            "sizes": numbered("Part", sizes),
            **({} if parts == 1 else {"stepping": _stepping(show, part, between, parts)}),
        },
        working=_working(show, given, between, part),
        drawing=_drawing(show, given, part, between, named),
        cautions=(_CUT_CAUTION,) if given.between == "kerf" else (),
        verdict=_verdict(show, named, difference),
    )


def _verdict(show, named, difference):
    """The marks, which begin with the part itself, and how far apart the parts come out by them."""
    told = [show.brief(place) for _, place in named[:_MOST_TOLD]]
    more = len(named) - len(told)
    listed = ", ".join([*told, *([f"{more} more"] if more else [])])
    apart = f" (parts differ by {fine_text(difference, show)})" if difference else ""
    return f"Mark from one end: {listed}{apart}"


def _marks(begins, ends, kind):
    """What is marked: the near side of each cut, both sides of each gap."""
    if kind != "gap":
        return numbered("Cut" if kind == "kerf" else "Mark", ends[:-1])
    return [
        each
        for number in range(1, len(ends))
        for each in (
            (f"Part {number} ends", ends[number - 1]),
            (f"Part {number + 1} starts", begins[number]),
        )
    ]


def _sizes(begins, ends, between, kind, show):
    """The parts as the marks give them: a gap is marked at both sides, a kerf at its near one."""
    marked = [*(show.mark(end) for end in ends[:-1]), ends[-1]]
    if kind == "gap":
        starts = [0, *(show.mark(begin) for begin in begins[1:])]
    else:
        starts = [0, *(end + between for end in marked[:-1])]
    return [end - start for start, end in zip(starts, marked, strict=True)]


def _stepping(show, part, between, parts):
    """Steps from one end to the other, or to where the last part begins."""
    if between:
        return stepping(show, part + between, parts - 1)
    return stepping(show, part, parts)


@lazy
def _working(show, given, between, part):
    whole, parts = given.whole, given.parts
    taken = f"({show.number(whole)} − {parts - 1} × {show.number(between)})"
    lines = [f"{taken if between else show.number(whole)} ÷ {parts}{show.equals(part)}"]
    step = part + between
    lines.append(
        f"Mark k is k × {show.number(step)}" + (f" − {show.number(between)}" if between else "")
    )
    return tuple(lines)


def _drawing(show, given, part, between, named):
    parts, step = given.parts, part + between
    runs = [
        (number * step, number * step + part, "stock", str(number + 1)) for number in range(parts)
    ]
    words = f"{fine_text(given.whole, show)} in {parts} equal parts of {show.brief(part)}"
    if between:
        words += f", with {fine_text(between, show)} between them"
    return stick(
        f"{words}. The numbers above are the marks, all from the left end.",
        given.whole,
        runs,
        cuts=[place for _, place in named] if given.between == "kerf" else (),
        marks=[(0, "0"), *((place, show.brief(place)) for _, place in named)],
        dimensions=(
            (0, part, show.brief(part), "answer"),
            (0, given.whole, fine_text(given.whole, show), "given"),
        ),
    )


RECKONER = Reckoner(
    key="equal_parts",
    title="Equal parts",
    asks="Where do I mark to divide a length into equal parts?",
    words=(
        "space evenly, divide, evenly spaced, equal spacing, even spacing, on center, slats, "
        "slat spacing, screw spacing, hole spacing, divide a board, divide evenly, division, "
        "dividers, split, halves, thirds, quarters, fifths, kerf, gap, step off, lay out, "
        "parts, pieces"
    ),
    order=130,
    job="layout",
    picture={
        "wood": "M3 20h34v11H3z",
        "ink": "M3 18q4.25-12 8.5 0q4.25-12 8.5 0q4.25-12 8.5 0q4.25-12 8.5 0",
        "chalk": "M11.5 20v11M20 20v11M28.5 20v11",
    },
    fields=(
        length("whole", "Whole length", help="From end to end.", least="1/64 in"),
        count("parts", "Parts", help="How many equal ones.", least="2", most=str(_MOST_PARTS)),
        choice(
            "between",
            "Between the parts",
            {"nothing": "Nothing, just marks", "kerf": "A saw kerf", "gap": "A gap"},
        ),
        kerf(shown_when=("between", ("kerf",))),
        length(
            "gap",
            "Gap",
            help="From the end of one part to the start of the next.",
            shown_when=("between", ("gap",)),
        ),
    ),
    answers=(
        Answer("part", "Each part", must="agree"),
        Answer("marks", "Marks, all from the same end", "lengths", must="agree"),
        Answer("difference", "Biggest difference between parts", must="agree"),
        Answer("sizes", "Parts, using these marks", "lengths", must="agree"),
        STEPPING,
    ),
    source=(
        "Arithmetic: (whole − what’s between) ÷ parts. Marking all from the same end is shop "
        "practice."
    ),
    compute=compute,
    example={"whole": "36 1/8", "parts": "5", "between": "nothing"},
)
