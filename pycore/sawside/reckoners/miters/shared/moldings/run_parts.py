"""The pieces of a run of molding as parts: how each is told, and how its ends are cut."""

from dataclasses import replace

from sawside.drawing.miters.edge_piece import EdgeCut, edge_piece
from sawside.errors import Refusal
from sawside.lengths.real import nearby, sign
from sawside.reckoners.declaration import Part
from sawside.reckoners.miters.shared.edge_ends import edge_end

_MOLDING = "Molding"
"""What a piece of it is sold as."""

_NOTES = {"coped": "then cope along that line"}


def full(show, piece):
    """The `Show` that tells a piece: between walls a little long springs in or is trimmed, and
    short gapes, so what is coped or butts is cut full."""
    fits_in = any(joint.kind in ("coped", "butted") for joint in piece.leg.joints)
    return show.by("reach") if fits_in else show


def told(show, piece, length):
    """A length of a piece as it is told: by the person's own rounding where it is mitered."""
    by = full(show, piece)
    return length if by is show else by.rounded(length)


def refuse_what_vanishes(show, pieces):
    """Refuse the first piece that has nothing left at its face, or at its back, or nothing in sight
    between the pieces coped over it."""
    for piece in pieces:
        long = piece.sides[0]
        short = min(piece.sides[1], piece.in_sight, key=nearby)
        if sign(short) > 0 or (piece.leg.is_cap and sign(piece.face) > 0):
            continue
        name, first = piece.leg.name, piece.layer == 1
        raise Refusal(
            "impossible",
            f"{name}: none of its molding would show; the corners take {show.text(long - short)} "
            f"of {show.text(long)}.",
            "Use a smaller projection, or check the wall.",
            field="walls" if first else "layers",
            row=piece.leg.wall - 1 if first else piece.layer - 1,
            part="length" if first else "projection",
        )


def part_of(show, name, piece, layers):
    """The `Part` of a piece."""
    sides = zip(("left", "right"), piece.leg.joints, piece.adds, strict=True)
    cuts = [(side, joint, _cut(joint, adds)) for side, joint, adds in sides]
    left, right = (_end(cut, joint, side) for side, joint, cut in cuts)
    long, short = (told(show, piece, each) for each in piece.sides)
    note = _NOTES["coped"] if piece.is_coped else None
    drawn = [cut for _, _, cut in cuts]
    by = full(show, piece)
    return Part(
        key=f"layer_{piece.layer}_{piece.leg.key}",
        name=name,
        length=told(show, piece, piece.tip_to_tip),
        width=layers[piece.layer - 1].height,
        thickness=piece.projection,
        left=left,
        right=right,
        long_side=long,
        short_side=short,
        drawing=edge_piece(by, name, piece.projection, piece.back, drawn, note=note),
        layer=piece.layer,
        profile=_MOLDING,
    )


def _cut(joint, adds):
    if joint.kind == "butted":
        return EdgeCut(adds, adds, setting="0° corner")
    if joint.kind == "scarfed":
        return EdgeCut(joint.setting * sign(adds), adds)
    if joint.scribe is not None:
        return EdgeCut(joint.setting, adds, setting=f"scribe {joint.scribe}")
    return EdgeCut(joint.setting, adds)


def _end(cut, joint, side):
    how = {"coped": "coped", "scarfed": "scarf"}.get(joint.kind)
    end = edge_end(cut, side)
    return replace(end, how=how) if how else end
