"""How many pieces of one length a stick gives, and what is left.

n pieces need n lengths and a kerf between each two: n x piece + (n - 1) x kerf must fit into what
the end trims leave. Whatever is over loses one more kerf when the last piece is cut from it.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.stick import stick
from sawside.errors import Refusal
from sawside.lengths.fine import fine_text
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import kerf, length
from sawside.wood.saw import SHORTEST_TO_HOLD

_SHORT_CAUTION = (
    f"Pieces or offcuts shorter than {SHORTEST_TO_HOLD}″ put your hand too close to the blade. "
    "Clamp them or cut them from a longer piece, and keep your hands at least 6″ away (shop "
    "practice). The saw maker’s instructions come first."
)
_CAUTION = "Check for nails, staples and splits. Leave offcuts alone until the blade stops."


def compute(given, show):
    """Count, rest, cuts, and how much longer the stick would have to be for one piece more."""
    whole, piece, width = given.stick, given.piece, given.kerf
    usable = whole - given.first_trim - given.last_trim
    if usable <= 0:
        raise Refusal(
            "impossible",
            f"The end trims take {show.text(given.first_trim + given.last_trim)}, and the stick is "
            f"{show.text(whole)}.",
            "Trim less, or use a longer stick.",
            field="first_trim",
        )
    pieces = (usable + width) // (piece + width)
    taken = pieces * piece + max(pieces - 1, 0) * width
    over = usable - taken
    left = max(over - width, 0) if pieces else usable
    cuts = pieces - 1 + bool(given.first_trim) + bool(over or given.last_trim) if pieces else 0
    missing = (pieces + 1) * piece + pieces * width - usable
    short = piece < SHORTEST_TO_HOLD or 0 < left < SHORTEST_TO_HOLD
    return Reckoning(
        answers={"pieces": pieces, "left": left, "cuts": cuts, "missing": missing},
        working=_working(show, given, usable, pieces, over, left),
        drawing=_drawing(show, given, pieces, left),
        cautions=(_CAUTION, _SHORT_CAUTION) if short else (_CAUTION,),
        verdict=_verdict(show, pieces, left, missing),
    )


def _verdict(show, pieces, left, missing):
    if not pieces:
        return f"0 fit: the stick is {show.brief(missing)} short"
    count = "1 piece" if pieces == 1 else f"{pieces} pieces"
    return f"{count}, {show.brief(left)} left over" if left else f"{count}, nothing left over"


@lazy
def _working(show, given, usable, pieces, over, left):
    piece, width = show.number(given.piece), show.number(given.kerf)
    lines = []
    if given.first_trim or given.last_trim:
        lines.append(
            f"Usable: {show.number(given.stick)} − {show.number(given.first_trim)} − "
            f"{show.number(given.last_trim)} = {show.number(usable)}"
        )
    ratio = (usable + given.kerf) / (given.piece + given.kerf)
    lines.append(
        f"({show.number(usable)} + {width}) ÷ ({piece} + {width}) = {show.pure(ratio)} → {pieces}"
    )
    if not pieces:
        return (*lines, "Not even one fits")
    lines.append(
        f"Over: {show.number(usable)} − {pieces} × {piece} − {pieces - 1} × {width} = "
        f"{show.number(over)}"
    )
    if over > given.kerf:
        lines.append(
            f"Less the last kerf: {show.number(over)} − {width}"
            f"{show.equals(show.rounded(left, 'be there'))}"
        )
    elif over:
        lines.append("The last kerf takes all of that")
    if (room := usable - pieces * given.kerf) > 0:
        lines.append(
            f"One more would fit if each were at most ({show.number(usable)} − {pieces} × {width}) "
            f"÷ {pieces + 1} = {show.number(room / (pieces + 1))}"
        )
    return tuple(lines)


def _drawing(show, given, pieces, left):
    step, start = given.piece + given.kerf, given.first_trim
    end = given.stick - given.last_trim
    runs = [(0, start, "waste", "")] if start else []
    runs += [
        (start + number * step, start + number * step + given.piece, "stock", str(number + 1))
        for number in range(pieces)
    ]
    if left:
        runs.append((end - left, end, "waste", ""))
    if given.last_trim:
        runs.append((end, given.stick, "waste", ""))
    cuts = [start + number * step + given.piece for number in range(pieces)]
    trimmed = [max(start - given.kerf, 0)] if start and pieces else []  # it has its kerf in it
    cuts = trimmed + [cut for cut in cuts if cut < given.stick]
    dimensions = [(0, given.stick, fine_text(given.stick, show), "given")]
    if pieces:
        dimensions.insert(0, (start, start + given.piece, fine_text(given.piece, show), "given"))
    words = (
        f"A stick {fine_text(given.stick, show)} long gives {counted(pieces, 'piece')} of "
        f"{fine_text(given.piece, show)}; "
        f"{show.brief(left, 'be there')} is left. "
        + (
            f"Dashed: cuts, each {fine_text(given.kerf, show)} wide, and what is waste."
            if cuts
            else ""
        )
    ).strip()
    marks = [(start / 2, "trim, kerf included")] if trimmed else []
    marks += [(end - left / 2, f"{show.brief(left, 'be there')} left over")] if left else []
    return stick(words, given.stick, runs, cuts=cuts, marks=marks, dimensions=dimensions)


RECKONER = Reckoner(
    key="how_many_fit",
    title="How many fit",
    asks="How many pieces can I get from one stick, and what’s left?",
    words=(
        "how many fit, how many pieces from a board, how many pieces, stick, board, stock, "
        "yield, offcut, cut up, enough, kerf, count, rip, crosscut"
    ),
    order=140,
    job="layout",
    picture={
        "wood": "M2 15h9v10H2zM14 15h9v10h-9zM26 15h9v10h-9z",
        "ink": "M38.5 15v10",
        "chalk": "M12.5 10v20M24.5 10v20M36.8 10v20",
    },
    basic=("stick", "piece", "kerf"),
    fields=(
        length("stick", "Stick", help="Its full length now.", least="1/4 in"),
        length("piece", "Piece", help="The length of each piece.", least="1/16 in"),
        kerf(),
        length(
            "first_trim",
            "Trim off the first end",
            help="To square it or lose a split, including that kerf.",
            default="0",
        ),
        length(
            "last_trim",
            "Unusable at the other end",
            help="A split or paint. The last cut can fall in it.",
            default="0",
        ),
    ),
    answers=(
        Answer("pieces", "Pieces", "count"),
        Answer("left", "Left over", must="be there"),
        Answer("cuts", "Cuts", "count"),
        Answer("missing", "Short of one more by", must="reach"),
    ),
    source=(
        "Arithmetic: n pieces and n − 1 kerfs fit where (usable + kerf) ÷ (piece + kerf) is at "
        "least n."
    ),
    compute=compute,
    example={"stick": "96", "piece": "10 23/32", "first_trim": "1/2"},
)
