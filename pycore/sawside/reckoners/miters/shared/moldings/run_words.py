"""What is said of a run of molding: its corners, which piece goes up first, how to cope."""

from sawside.geometry.miter import half_corner
from sawside.lengths.show import angle_text

AT_THE_SAW = (
    "Stand each piece with its back against the fence, top edge up, and swing the saw as its "
    "drawing shows. If it’s too tall for the saw, lay it on its back and bevel by the same angle."
)
RETURNS_LAST = "Cut mitered returns last, from the end of a longer stick."
_COPE = (
    "Miter the end as for an inside corner. Then saw along the line the miter leaves on the face, "
    "leaning the saw back a few degrees so only the front edge touches. Test it on an offcut of "
    "the same molding, and file to fit."
)
_PAST_SQUARE = (
    " In a corner over 90°, lean the saw back by what it’s over, and those few degrees more: the "
    "butted piece leans in behind the cope there."
)
_WELL_PAST = 95
"""Degrees up to which those few of any cope will do."""
_ENDS = {"coped": "is coped", "butted": "butts into the corner"}


def how_to_cope(corners):
    """How an end is coped, at the angles that these corners have."""
    past = any(corner.is_coped and corner.degrees > _WELL_PAST for corner in corners)
    return _COPE + (_PAST_SQUARE if past else "")


def verdict_of(many, first, longest):
    """Of how many pieces the number beside it is the first, from the texts of two lengths."""
    if many == 1:
        return f"1 piece, {first}"
    if first == longest:
        return f"{many} pieces, longest {longest}"
    return f"First of {many} pieces (longest {longest})"


def name_of(piece, several):
    """What a piece is called where there are several layers, or one."""
    name = piece.leg.name
    return f"Layer {piece.layer}: {name[0].lower()}{name[1:]}" if several else name


def corners_text(corners):
    """Every corner with its miter, in a sentence each."""
    return " ".join(
        f"Corner {number}, {corner.turn} {angle_text(corner.degrees)}: "
        f"{'cope after a' if corner.is_coped else 'miter'} "
        f"{angle_text(half_corner(corner.degrees))}{' miter' if corner.is_coped else ''}."
        for number, corner in enumerate(corners, 1)
    )


def ends_text(pieces):
    """Which ends butt and which are coped, a sentence for each piece that has one."""
    return " ".join(filter(None, (_copes_of(piece) for piece in pieces if piece.layer == 1)))


def _copes_of(piece):
    left, right = (_ENDS.get(joint.kind) for joint in piece.leg.joints)
    if left == right:
        return left and f"{piece.leg.name}: {left} at both ends."
    said = [f"{what} at the {side}" for what, side in ((left, "left"), (right, "right")) if what]
    return f"{piece.leg.name}: {', '.join(said)}."


def order_of(pieces, layers, *, closed):
    """Which piece first and why, for the pieces that there are."""
    lines = ["Do one layer at a time: fit it before you cut the next."] if layers > 1 else []
    lines.append(f"{pieces[0].leg.name} first. {_why(pieces)}")
    legs = [piece.leg for piece in pieces]
    if any(leg.left.is_free or leg.right.is_free for leg in legs if not leg.is_cap):
        lines.append(
            "For a piece with a free end, cut the other end first, hold it in place, mark the free "
            "end and cut it last."
        )
    if any(_is_coped_and_mitered(piece) for piece in pieces):
        lines.append(
            "Where a piece is coped at one end and mitered at the other, fit the cope first, then "
            "mark the miter in place."
        )
    if closed:
        lines.append("Leave the first piece loose until the last one fits between its neighbors.")
    if any(leg.is_cap for leg in legs):
        lines.append(RETURNS_LAST)
    if any(_goes_around(leg) for leg in legs):
        lines.append(
            "To carry the grain around the corners, lay the pieces out left to right on one stick "
            "before you cut."
        )
    return " ".join(lines)


def _goes_around(leg):
    """Whether a leg turns an outside corner, where the grain can be seen to go around it."""
    return any(joint.corner is not None and not joint.is_inside for joint in leg.joints)


def _is_coped_and_mitered(piece):
    return {"coped", "mitered"} == {joint.kind for joint in piece.leg.joints}


def _why(pieces):
    leg = pieces[0].leg
    if any(piece.is_coped for piece in pieces):
        return "The pieces next to it are coped over it, so their joints don’t face you."
    if leg.is_fixed:
        return (
            "You can’t trim its ends in place, and if it comes out short it still makes a shorter "
            "piece."
        )
    return "It’s the longest. Cut its free end last." if len(pieces) > 1 else "Cut it a bit long."
