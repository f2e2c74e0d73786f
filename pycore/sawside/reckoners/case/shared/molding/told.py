"""What is told of any molding on a case: its lengths, what to buy, the order, the cautions."""

from fractions import Fraction

from sawside.lengths.real import nearby
from sawside.reckoners.miters.shared.moldings.run_cautions import SELF_RETURN
from sawside.reckoners.miters.shared.moldings.run_words import RETURNS_LAST, how_to_cope, verdict_of
from sawside.wood.caution import Caution
from sawside.wood.saw import SAW_CAUTIONS, SHORT_PIECE, SHORTEST_TO_HOLD, THIN_STRIPS

_COPING = Caution(
    "Clamp the piece to cope it.",
    "Clamp the piece to cope it, and keep your hands behind the saw. You can’t cope a profile with "
    "an undercut.",
)
_THIN = Caution("Back up thin strips at the saw.", THIN_STRIPS)
_THIN_FROM = Fraction(3, 8)


def _named(pieces):
    """(piece, its number in the order of cutting with its name; tip to tip where that is no edge).

    `pieces` are in that order.
    """
    for number, piece in enumerate(pieces, 1):
        tips = ", tip to tip" if piece.is_between else ""
        yield piece, f"{number}. {piece.leg.name}", tips


def lengths_of(run, show, pieces, length_of, *, tips=False):
    """An answer of the kind "lengths": each piece with `length_of` it. From tip to tip they are all
    told; else what closes a return isn't, as its inside edge is a point."""
    return [
        (f"{name}{between if tips else ''}", run.told(show, piece.leg, length_of(piece)))
        for piece, name, between in _named(pieces)
        if tips or not piece.leg.is_cap
    ]


def about_all(given, run, pieces):
    """The answers that any molding has, of its pieces as they lie."""
    answers = {"stock": with_waste(given, pieces)}
    if len(pieces) > 1:
        answers["order"] = order_of(pieces)
    if run.past:
        answers["packing"] = [(f"{side.capitalize()} side", far) for side, far in run.past.items()]
    if any(piece.is_coped for piece in pieces):
        answers["how"] = how_to_cope(())
    return answers


def verdict(show, run, pieces):
    """Of how many pieces the first one's length stands beside it, and the longest."""
    longest = max(pieces, key=lambda piece: nearby(piece.tip_to_tip))
    first, most = (
        show.bare(run.told(show, each.leg, each.tip_to_tip)) for each in (pieces[0], longest)
    )
    return verdict_of(len(pieces), first, most)


def with_kerfs(given, pieces):
    """What the pieces take of a stick together: each with a cut along it at both ends."""
    return sum((piece.off_a_stick(given.kerf) for piece in pieces), Fraction(0))


def with_waste(given, pieces):
    """That with its waste."""
    return with_kerfs(given, pieces) * (1 + given.waste / 100)


def stock_worked(given, show, pieces):
    """The line of working for what to buy."""
    part = show.pure(1 + given.waste / 100, decimals=True)
    kerfed = show.number(with_kerfs(given, pieces))
    total = show.by("reach").equals(with_waste(given, pieces))
    return f"To buy, all pieces with their kerfs and waste: {kerfed} × {part}{total}"


def line_worked(show, line):
    """The working of what one piece lies on, where it isn't just the size that was given."""
    if len(line.steps) == 1:
        return ()
    first, *others = line.steps
    terms = "".join(show.term(step.inches) for step in others)
    return (f"{line.name}, on the case: {show.number(first.inches)}{terms}",)


def order_of(pieces):
    """Which piece first, of several in the order of cutting."""
    said = []
    sides = [piece for piece in pieces if not piece.leg.is_cap]
    if len(sides) > 1:
        said.append(f"{sides[0].leg.name} first.")
    if any(joint.is_free for piece in sides for joint in piece.leg.joints):
        said.append(
            "Where an end is square to the wall, cut the other end first, hold the piece in place, "
            "mark the square end and cut it last."
        )
    if any(piece.is_coped for piece in sides):
        said.append("Fit a cope before you mark the other end.")
    if len(sides) < len(pieces):
        said.append(RETURNS_LAST)
    return " ".join(said)


def cautions_of(given, pieces):
    """The cautions for pieces as they lie."""
    lines = [*SAW_CAUTIONS]
    if any(piece.leg.is_cap for piece in pieces):
        lines.append(SELF_RETURN)
    if any(not piece.leg.is_cap and piece.sides[1] < SHORTEST_TO_HOLD for piece in pieces):
        lines.append(SHORT_PIECE)
    if any(piece.is_coped for piece in pieces):
        lines.append(_COPING)
    if given.molding != "crown" and given.thickness <= _THIN_FROM:
        lines.append(_THIN)
    return tuple(lines)
