"""Moldings in inside corners: which piece runs square, which is coped over it, and how long."""

from dataclasses import replace
from fractions import Fraction

from sawside.drawing.miters.coped import coped_plan
from sawside.drawing.miters.edge_piece import EdgeCut, edge_piece
from sawside.errors import Refusal
from sawside.geometry.coped import COPED, FREE, coped_run
from sawside.geometry.miter import half_corner
from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import (
    Answer,
    Part,
    Reckoner,
    Reckoning,
    choice,
    count,
    length,
    rows,
)
from sawside.reckoners.miters.shared.corner_field import corner_field, corner_of
from sawside.reckoners.miters.shared.edge_ends import edge_end
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.reckoners.miters.shared.moldings.coped_words import (
    HOW,
    ends_text,
    settings_text,
    working_of,
)
from sawside.wood.saw import cautions_at_the_saw

_AROUND = {"row": "In a row, like an alcove", "room": "All around a room"}
_MOST_OFF = 10
"""Degrees by which measured corners of a room may fail to add up before it is refused."""
_OUTSIDE = (
    "Read it inside the room. Miter an outside corner, don’t cope it: run the walls up to it as a "
    "row, and use Molding around a case for the corner."
)
_CAUTIONS = (
    "Clamp the piece to cope it, and keep your hands behind the saw.",
    "You can’t cope a profile with an undercut. Miter that corner.",
)


def compute(given, show):
    """Each piece along its wall in inches; corners other than square make irrational ones.

    A piece that is a little long is sprung in or trimmed, one that is short gapes: it is cut full.
    """
    full = show.by("reach")
    closed = given.around == "room"
    corners = [_corner(wall, row) for row, wall in enumerate(given.walls)]
    _check_walls(given, corners, closed)
    walls, first = [wall.length for wall in given.walls], _first(given, closed)
    pieces = coped_run(walls, corners, given.projection, first, closed=closed)
    parts = [_part(given, full, piece) for piece in pieces]
    return Reckoning(
        answers={
            "first": parts[0].length,
            "pieces": [
                (f"{piece.order}. {part.name}", part.length)
                for piece, part in zip(pieces, parts, strict=True)
            ],
            "faces": [(f"Wall {piece.wall}", piece.face) for piece in pieces],
            "ends": ends_text(pieces),
            "settings": settings_text(pieces),
            "how": HOW,
            "stock": sum((part.length.exact for part in parts), Fraction(0)),
        },
        working=tuple(working_of(given, full, pieces, closed, corners)),
        drawing=coped_plan(full, pieces, corners),
        cautions=(*cautions_at_the_saw(*(part.short_side.exact for part in parts)), *_CAUTIONS),
        parts=tuple(parts),
    )


def _corner(wall, row):
    place = {"field": "walls", "row": row, "part": "corner"}
    return corner_of(wall, "corner", most=150, outside=False, instead=_OUTSIDE, **place)


def _check_walls(given, corners, closed):
    """Refuse too few walls, and corners that can't close a room."""
    walls, least = given.walls, 3 if closed else 2
    if len(walls) < least:
        raise Refusal(
            "impossible",
            f"{'A room has' if closed else 'A corner needs'} at least {least} walls, and "
            f"{len(walls)} {'is' if len(walls) == 1 else 'are'} filled in.",
            "Add a wall." if not closed else "Add walls, or choose In a row.",
            field="walls",
        )
    turns, due = sum(corners), 180 * (len(walls) - 2)
    if closed and abs(turns - due) > _MOST_OFF:
        raise Refusal(
            "impossible",
            f"The corners of a room with {len(walls)} walls add up to {due}°, and these add up to "
            f"{angle_text(turns, 2)}.",
            "Measure the corners again. You can only cope inside corners.",
            field="walls",
        )


def _first(given, closed):
    """The wall (from 0) whose piece is square at both ends."""
    walls = given.walls
    if given.first is None:
        return 0 if closed else len(walls) // 2
    if given.first > len(walls):
        raise Refusal(
            "impossible",
            f"There’s no wall {given.first}: {len(walls)} are filled in.",
            f"Use a number from 1 to {len(walls)}.",
            field="first",
        )
    return given.first - 1


def _part(given, show, piece):
    between = FREE not in (piece.left.kind, piece.right.kind)
    extra = given.extra if between else Fraction(0)
    back, face = piece.back + extra, piece.face + extra
    if sign(face) <= 0:
        raise Refusal(
            "impossible",
            f"Wall {piece.wall}: none of its molding would show; the corners take "
            f"{show.text(piece.length - piece.face)} of {show.text(piece.length)}.",
            "Use a smaller projection, or check the wall.",
            field="walls",
            row=piece.wall - 1,
            part="length",
        )
    cuts = [_cut(end) for end in (piece.left, piece.right)]
    coped = COPED in (piece.left.kind, piece.right.kind)
    note = "then cope along that line" if coped else None
    name = f"Wall {piece.wall}"
    return Part(
        key=f"wall_{piece.wall}",
        name=name,
        length=show.rounded(back),
        width=given.height,
        thickness=given.projection,
        left=_end(piece.left, cuts[0], "left"),
        right=_end(piece.right, cuts[1], "right"),
        long_side=show.rounded(back),
        short_side=show.rounded(face),
        drawing=edge_piece(show, name, given.projection, back, cuts, note=note),
    )


def _cut(end):
    if end.kind == COPED:
        return EdgeCut(-half_corner(end.corner), -end.face)
    square = EdgeCut(Fraction(0), Fraction(0))
    if end.kind == FREE:
        return square
    return replace(square, setting="0° corner")


def _end(end, cut, side):
    if end.kind == COPED:
        return replace(edge_end(cut, side), how="coped")
    return edge_end(cut, side)


RECKONER = Reckoner(
    key="coped_corner",
    title="Coped corner",
    asks="Which pieces butt, which get coped, and how long are they?",
    words=(
        "cope, coped, coping, coped joint, inside corner, baseboard, molding, room, alcove, "
        "wall, scribe, square cut"
    ),
    order=216,
    fields=(
        choice("around", "Walls", _AROUND),
        rows(
            "walls",
            "Walls, left to right as you face them",
            (
                length("length", "Length", help="Along the wall, at the molding.", least="1/4 in"),
                corner_field(
                    "corner",
                    "Corner at right",
                    "this wall and the next",
                    least=30,
                    only="Inside corners only. Not used at the end of a row.",
                ),
            ),
            row_label="Wall",
            most_rows=12,
        ),
        length(
            "projection",
            "Projection",
            help="How far the molding sticks out at its thickest.",
            least="1/64 in",
            most="12 in",
        ),
        length(
            "height",
            "Height",
            least="1/64 in",
            most="24 in",
            help="Only for the cut list.",
            **blank("Left out of the cut list."),
        ),
        count(
            "first",
            "Wall you see first",
            in_short="wall {} seen first",
            least="1",
            most="12",
            help="Its piece butts at both ends, so the joints don’t face you.",
            **blank("The center wall of a row, or the first of a room."),
        ),
        length(
            "extra",
            "Extra for a spring fit",
            default="0 in",
            most="1/4 in",
            help="Added to a piece between two corners, to press it tight.",
        ),
    ),
    answers=(
        Answer("first", "First piece, along its wall", must="reach"),
        Answer("pieces", "Lengths along the wall, in fitting order", "lengths", must="reach"),
        Answer("faces", "Visible lengths, without the spring", "lengths", must="reach"),
        Answer("ends", "Butted or coped", "text"),
        Answer("settings", "Miter before coping", "text"),
        Answer("how", "How to cope", "text"),
        Answer("stock", "Stock, without kerfs", must="reach"),
    ),
    source=(
        "Which piece butts, the fitting order, and a miter that shows the line to cope: shop "
        "practice. Where faces cross, projection × cot(corner ÷ 2): plane "
        "trigonometry."
    ),
    compute=compute,
    example={
        "around": "row",
        "walls": [
            {"length": '14 7/8"'},
            {"length": '37 9/16"', "corner": "89.5"},
            {"length": '14 7/8"'},
        ],
        "projection": "5/8",
        "height": "3 1/4",
        "first": "2",
        "extra": "1/32",
    },
    makes_parts=True,
)
