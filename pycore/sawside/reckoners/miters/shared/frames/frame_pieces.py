"""The pieces of a frame around something: how large they are, their stock, and how all is told."""

from fractions import Fraction

from sawside.drawing.piece import Cut, mitered_piece
from sawside.errors import Refusal
from sawside.geometry.end import KEPT_PLACES
from sawside.geometry.frame import sticks
from sawside.lengths.real import nearby, sign
from sawside.lengths.show import angle_text, degrees_text
from sawside.reckoners.declaration import End, Part, Reckoning
from sawside.wood.saw import cautions_at_the_saw

_MUST = {"panel": "reach", "outside": "go in"}
"""By what is measured: what goes in a rabbet has to go in, a frame of a given outside to fit."""


def fitting(given, show):
    """A `Show` for the sides of the frame, which are rounded so that they fit what was measured."""
    return show.by(_MUST.get(given.around))


def grown(given):
    """How much larger than the measured thing the inside is at each side, in exact inches."""
    if given.around == "panel":
        return given.clearance - given.rabbet
    return {"opening": given.reveal, "outside": -given.stock}.get(given.around, Fraction(0))


def grown_text(given, show, times):
    """The same as a part of a sum: " + 2 × 1/16 − 2 × 3/8"."""
    much = f"{times} × " if times > 1 else ""
    if given.around == "panel":
        return f" + {much}{show.number(given.clearance)} − {much}{show.number(given.rabbet)}"
    if given.around == "opening":
        return f" + {much}{show.number(given.reveal)}"
    return f" − {much}{show.number(given.stock)}" if given.around == "outside" else ""


def check_rabbet(given, show, narrowest):
    """Refuse a rabbet as wide as the narrowest stock."""
    if given.rabbet is not None and given.rabbet >= narrowest:
        raise Refusal(
            "impossible",
            f"A {show.text(given.rabbet)} rabbet leaves nothing of stock {show.text(narrowest)} "
            "wide.",
            f"Make the rabbet less than {show.text(narrowest)}.",
            field="rabbet",
        )


def check_inside(given, show, inside, key, stock):
    """Refuse a frame with nothing inside: `stock` is what the frame's own wood takes of `key`."""
    if sign(inside) > 0:
        return
    if given.around == "outside":
        raise Refusal(
            "impossible",
            f"The stock takes {show.text(stock)}, so nothing is left inside.",
            f"Use more than {show.text(stock)}, or narrower stock.",
            field=key,
        )
    raise Refusal(
        "impossible",
        f"Rabbets of {show.text(given.rabbet)} cover all of it.",
        "Use a narrower rabbet, or check the size.",
        field=key,
    )


def settings_text(side):
    """Both settings of a piece, as it is seen with its long side up."""
    left, right = angle_text(side.left), angle_text(side.right)
    return f"both ends {left}" if left == right else f"left end {left}, right end {right}"


def setting(sides):
    """The answers that tell the one setting of all pieces."""
    return {"setting": sides[0].left, "between_faces": 90 - sides[0].left}


def framed(given, show, sides, measures, settings, working, picture):
    """The whole `Reckoning` of a frame with such `sides`.

    `measures` are (name, inside, outside) in inches, `settings` the answers that tell the settings.
    """
    fitted = fitting(given, show)
    bought, stock_worked = _stock(given, show, sides)
    answers = {
        "long_sides": [(_counted(side), fitted.rounded(side.outside)) for side in sides],
        "short_sides": [(_counted(side), fitted.rounded(side.inside)) for side in sides],
        **settings,
        "inside": [(name, fitted.rounded(inside)) for name, inside, _ in measures],
        "outside": [(name, fitted.rounded(outside)) for name, _, outside in measures],
        **bought,
    }
    if given.around == "panel":
        backs = [(name, inside + 2 * given.rabbet) for name, inside, _ in measures]
        answers["rabbet_size"] = [(name, fitted.rounded(size)) for name, size in backs]
    return Reckoning(
        answers=answers,
        working=(*working, *stock_worked),
        drawing=picture,
        cautions=cautions_at_the_saw(*(side.inside for side in sides)),
        verdict=_verdict(sides, bought["sticks"]),
        parts=tuple(_part(fitted, side) for side in sides),
    )


def _verdict(sides, sticks):
    """The miter where all pieces have one, and what to buy."""
    degrees = {angle_text(each) for side in sides for each in (side.left, side.right)}
    miter = f"Miter {degrees.pop()}" if len(degrees) == 1 else "Unequal miters"
    return f"{miter}; buy {sticks}"


def _counted(side):
    return side.name if side.count == 1 else f"{side.name}, {side.count} pieces"


def _stock(given, show, sides):
    """(answers, working): stock used and sticks to buy, for each width of stock."""
    totals, bought, lines = [], [], []
    for width in sorted({side.width for side in sides}):
        kinds = [side for side in sides if side.width == width]
        taken = [(side.taken(given.kerf), side.count) for side in kinds]
        longest, text = max((takes for takes, _ in taken), key=nearby), show.text(width)
        if longest > given.stick:
            raise Refusal(
                "impossible",
                f"A piece takes {show.text(longest)} with its kerf, and a stick is only "
                f"{show.text(given.stick)}.",
                "Use longer sticks.",
                field="stick",
            )
        number = sticks(taken, given.stick)
        total = sum((takes * many for takes, many in taken), Fraction(0))
        totals.append((f"{text} wide", total))
        name = "stick" if number == 1 else "sticks"
        bought.append(f"{number} {name} of {show.text(given.stick)}, {text} wide")
        lines += [_slanting(show, given.kerf, side) for side in kinds]
        pieces = " + ".join(
            f"{many} × {show.number(takes)}" if many > 1 else show.number(takes)
            for takes, many in taken
        )
        lines.append(f"Stock {text} wide: {pieces}{show.equals(show.rounded(total, 'reach'))}")
    return {"total": totals, "sticks": ", ".join(bought)}, tuple(lines)


def _slanting(show, kerf, side):
    """The line of working that adds to a piece what its cut takes along the edge."""
    steep = max(side.left, side.right, key=nearby)
    return (
        f"{side.name}, with the slanted kerf: {show.number(side.outside)} + {show.number(kerf)} ÷ "
        f"cos {degrees_text(steep)}° = {show.number(side.taken(kerf))}"
    )


def _end(degrees):
    return End("flat", angle_text(degrees, KEPT_PLACES), degrees)


def _part(show, side):
    cuts = (Cut(side.left, side.left_adds), Cut(side.right, side.right_adds))
    left, right = (_end(cut.degrees) for cut in cuts)
    long, short = show.rounded(side.outside), show.rounded(side.inside)
    return Part(
        key=side.key,
        name=side.name,
        count=side.count,
        length=long,
        width=side.width,
        left=left,
        right=right,
        long_side=long,
        short_side=short,
        drawing=mitered_piece(show.by(None), side.width, long, short, cuts, given=None),
    )
