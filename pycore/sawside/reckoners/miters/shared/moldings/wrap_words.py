"""What is said about a wrap: names of its pieces, order of cutting, working, cautions."""

from sawside.geometry.angles import tangent
from sawside.geometry.wrap import off_a_parallel_wall
from sawside.lengths.fine import fine_text
from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.wood.saw import SAW_CAUTIONS, SHORTEST_TO_HOLD

_SELF_RETURN_CAUTION = (
    "A mitered return is too small to hold. Cut its miter on the end of a long stick, then cut it "
    "off with a fine hand saw or the way the saw maker says for small pieces. Let the blade stop "
    "before you raise it."
)
AT_THE_SAW = (
    "Stand each piece with its back against the fence, top edge up, and swing the saw as its "
    "drawing shows. If it’s too tall for the saw, lay it on its back and bevel by the same angle."
)
_INSIDE_CAUTION = (
    "Inside miters on baseboard often open up as wood and walls move. Many are coped instead "
    "(shop practice)."
)


def name_of(piece, several):
    name = piece.leg.name
    return f"Layer {piece.layer}: {name[0].lower()}{name[1:]}" if several else name


def order_of(pieces, several):
    """Which piece first and why, for the pieces that there are."""
    first = pieces[0]
    fixed = not (first.leg.left.free or first.leg.right.free)
    lines = ["Do one layer at a time: fit it before you cut the next."] if several else []
    lead = first.leg.name
    if fixed:
        lines.append(
            f"{lead} first. Both ends are mitered, so you can’t trim it in place, and if it comes "
            "out short it still makes a shorter piece."
        )
    else:
        lines.append(f"{lead} first. It’s the longest. Cut its free end last.")
    if any(piece.leg.left.free or piece.leg.right.free for piece in pieces if not piece.leg.is_cap):
        lines.append(
            "For a piece with a free end, cut the miter first, hold it in place, mark the free end "
            "and cut it last."
        )
    if any(piece.leg.is_cap for piece in pieces):
        lines.append("Cut mitered returns last, from the end of a longer stick.")
    lines.append(
        "To carry the grain around the corners, lay the pieces out left to right on one stick "
        "before you cut."
    )
    return " ".join(lines)


def working_of(show, pieces, sides, several):
    """The settings, what each corner adds in each layer, and each piece; `pieces` as they lie."""
    lines = [line for side in sides for line in _side_worked(show, side, pieces)]
    seen = set()
    for piece in pieces:
        for joint, adds in ((piece.leg.left, piece.left_adds), (piece.leg.right, piece.right_adds)):
            degrees, where = abs(joint.setting), f"{joint.name}{_layer(piece, several)}"
            if degrees in (0, 45) or where in seen:
                continue
            seen.add(where)
            size = show.number(piece.projection)
            lines.append(
                f"{where[0].upper()}{where[1:]}: {size} × tan {show.pure(degrees)}° = {size} × "
                f"{show.pure(tangent(degrees))}{show.equals(abs(adds))}"
            )
    for piece in pieces:
        terms = "".join(
            f" {'−' if sign(adds) < 0 else '+'} {show.number(abs(adds))}"
            for adds in (piece.left_adds, piece.right_adds)
            if sign(adds)
        )
        lines.append(
            f"{name_of(piece, several)}, face: {show.number(piece.back)}{terms}"
            f"{show.equals(piece.face)}"
        )
        if piece.is_between:
            out = max(piece.left_adds, piece.right_adds)
            lines.append(
                f"{name_of(piece, several)}, tip to tip: {show.number(piece.back)} + "
                f"{show.number(out)}{show.equals(piece.tip_to_tip)}"
            )
    if several:
        lines.append("The back of each layer is the face of the one under it, unrounded")
    return tuple(lines)


def _layer(piece, several):
    return f", layer {piece.layer}" if several else ""


def _side_worked(show, side, pieces):
    name = side.name.capitalize()
    if side.corner is not None:
        corner = show.pure(side.corner)
        setting = angle_text(90 - side.corner / 2, 2)
        yield f"{name} corner {corner}°: miter 90 − {corner} ÷ 2 = {setting}"
    if side.ending == "self_return":
        total = sum(piece.projection for piece in pieces if piece.leg.key == "front")
        yield (
            f"{name} mitered return: the outside layer ends at {show.number(side.depth)}, so the "
            f"first one turns at {show.number(side.depth)} − {show.number(total)} = "
            f"{show.number(side.depth - total)} of its back"
        )


def cautions_of(show, named, sides, total, inside):
    """The cautions for (name, piece) pairs; `total` is how far all layers stand out."""
    lines = list(SAW_CAUTIONS)
    short = [
        name for name, piece in named if not piece.leg.is_cap and piece.sides[1] < SHORTEST_TO_HOLD
    ]
    if short:
        lines.append(
            f"Too short to hold by hand, under {SHORTEST_TO_HOLD}″: {', '.join(short)}. Cut it "
            "from a longer stick, or clamp it the way the saw maker says. Keep your hands 6″ from "
            "the blade (shop practice)."
        )
    if any(piece.leg.is_cap for _, piece in named):
        lines.append(_SELF_RETURN_CAUTION)
    if inside:
        return (*lines, _INSIDE_CAUTION)
    for side in sides:
        if side.ending not in ("wall", "board") or side.corner == 90:
            continue
        off = off_a_parallel_wall(total, side.corner)
        if side.scribe >= off:
            continue
        where = "outside face" if side.corner > 90 else "case"
        lines.append(
            f"If the wall runs parallel to the front, the square end of the {side.name} return "
            f"is {fine_text(off, show)} off it at the {where}. Leave at least that to scribe."
        )
    return tuple(lines)
