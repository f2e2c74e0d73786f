"""What is said about moldings that are coped: their ends, how to cope one, and the working."""

from sawside.geometry.coped import COPED, FREE
from sawside.geometry.miter import half_corner
from sawside.lengths.real import sign
from sawside.lengths.show import angle_text

HOW = (
    "Miter the end as for an inside corner. Then saw along the line the miter leaves on the face, "
    "leaning the saw back a few degrees so only the front edge touches. Test it on an offcut of "
    "the same molding, and file to fit."
)
_ENDS = {"free": "ends free", "square": "butts into the corner", "coped": "is coped"}


def ends_text(pieces):
    """Which ends run square and which are coped, a sentence for each piece."""
    return " ".join(_piece_text(piece) for piece in pieces)


def _piece_text(piece):
    left, right = _ENDS[piece.left.kind], _ENDS[piece.right.kind]
    if left == right:
        return f"Wall {piece.wall}: {left} at both ends."
    return f"Wall {piece.wall}: {left} at the left, {right} at the right."


def settings_text(pieces):
    """The setting of the miter before coping, once for each corner."""
    settings = dict.fromkeys(
        f"corner of {angle_text(end.corner, 2)}: {angle_text(half_corner(end.corner), 2)}"
        for piece in pieces
        for _, end in _sides(piece)
        if end.kind == COPED
    )
    text = "; ".join(settings)
    return text[0].upper() + text[1:]


def working_of(given, show, pieces, closed, corners):
    """The lines of working; `show` tells what is cut full."""
    for piece in pieces:
        yield from _back_worked(given, show, piece)
        yield from _copes_worked(given, show.by(None), piece)
    whole = 180 * (len(corners) - 2)
    if closed and sum(corners) != whole:
        yield (
            f"The corners add up to {show.pure(sum(corners))}°; those of a room with "
            f"{len(corners)} walls add up to {whole}°"
        )


def _sides(piece):
    return ("left", piece.left), ("right", piece.right)


def _back_worked(given, full, piece):
    show = full.by(None)
    leaning = [(side, end) for side, end in _sides(piece) if sign(end.back)]
    if leaning:
        size = show.number(given.projection)
        lines = (
            f"{size} × cot {show.pure(end.corner)}°{show.equals(end.back)} off the {side} end, "
            "where the corner leans over the butted piece"
            for side, end in leaning
        )
        yield f"Wall {piece.wall}: {'; '.join(lines)}"
    extra = 0 if FREE in (piece.left.kind, piece.right.kind) else given.extra
    terms = show.number(piece.length)
    terms += "".join(f" − {show.number(end.back)}" for _, end in leaning)
    terms += f" + {show.number(extra)}" if extra else ""
    why = ", with the spring" if extra else ""
    yield f"Wall {piece.wall}, along the wall{why}: {terms}{full.equals(piece.back + extra)}"


def _copes_worked(given, show, piece):
    size = show.number(given.projection)
    for side, end in _sides(piece):
        if end.kind == COPED:
            half = show.pure(half_corner(end.corner))
            yield (
                f"Wall {piece.wall}, {side} end coped: its face is shorter by {size} × tan "
                f"{half}°{show.equals(end.face)}"
            )
