"""A run that is longer than a stick, made of pieces that are scarfed over studs or blocks.

A scarf cut a degrees from square overlaps by thickness x tan(a), and its face is thickness /
cos(a) long. Every joint costs its overlap once.
"""

from fractions import Fraction
from itertools import pairwise

from sawside.drawing.miters.edge_piece import EdgeCut, edge_piece
from sawside.drawing.miters.scarf import scarf_run
from sawside.errors import Refusal
from sawside.geometry.miter import along_the_edge
from sawside.geometry.scarf import even_joints, joints_on, places, scarf_at, scarf_of_slope
from sawside.reckoners.declaration import Answer, Part, Reckoner, Reckoning
from sawside.reckoners.fields import angle, choice, count, kerf, length
from sawside.reckoners.miters.shared.edge_ends import edge_ends
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.reckoners.miters.shared.moldings.scarf_words import cautions_of, working_of

_CUTS = {"45": "45°", "30": "30°", "other": "Other angle", "slope": "Slope, 1 in ___"}
_STEEPEST = 75
_MOST_JOINTS = 24


def compute(given, show):
    """Overlap, joint face, the place of each joint, and every piece, in inches."""
    scarf = _scarf(given)
    sawn = along_the_edge(given.kerf, scarf.overlap, given.thickness)
    joints = _joints(given, show, scarf.overlap, sawn)
    stretches = list(pairwise([Fraction(0), *joints, given.run]))
    parts = tuple(
        _piece(show, given, number, stretch, scarf) for number, stretch in enumerate(stretches, 1)
    )
    long = sum((part.length for part in parts), Fraction(0))
    return Reckoning(
        answers={
            "first": joints[0],
            "joints": [(f"Joint {number}", joint) for number, joint in enumerate(joints, 1)],
            "pieces": [(part.name, part.length) for part in parts],
            "overlap": scarf.overlap,
            "face": scarf.face,
            "setting": scarf.degrees,
            "extra": scarf.overlap * len(joints),
            "stock": long + 2 * (sawn * len(joints) + given.kerf),
            "count": len(parts),
        },
        working=working_of(show, given, scarf, stretches, parts),
        drawing=scarf_run(show, given, joints, scarf),
        cautions=cautions_of(given, scarf, parts),
        verdict=_verdict(show, parts),
        parts=parts,
    )


def _verdict(show, parts):
    """What the place of a joint is, and where there is one, how long its two pieces are."""
    joints = len(parts) - 1
    if joints > 1:
        return f"Center of the first of {joints} joints, from the left end"
    left, right = (show.brief(part.length) for part in parts)
    return f"Center of the joint, from the left end (long points {left} and {right})"


def _scarf(given):
    if given.cut == "slope":
        return scarf_of_slope(Fraction(given.slope), given.thickness)
    return scarf_at(given.angle if given.cut == "other" else Fraction(given.cut), given.thickness)


def _joints(given, show, overlap, sawn):
    """The middles of the joints from the left end, as few as there can be."""
    longest = given.stick - 2 * sawn
    if given.run <= given.stick:
        raise Refusal(
            "impossible",
            f"One {show.text(given.stick)} stick covers a run of {show.text(given.run)}.",
            "You don’t need a scarf. Check the two lengths.",
            field="run",
        )
    if longest <= overlap:
        raise Refusal(
            "impossible",
            f"The scarfs use up a {show.text(given.stick)} stick: the overlap and two kerfs take "
            f"{show.text(overlap + 2 * sawn)}.",
            "Use a longer stick, or a smaller angle for a shorter scarf.",
            field="stick",
        )
    if given.spacing is None:
        joints = even_joints(given.run, longest, overlap, _MOST_JOINTS)
    else:
        first = given.spacing if given.first is None else given.first
        studs = places(first, given.spacing, given.run)
        joints = joints_on(studs, given.run, longest, overlap, _MOST_JOINTS)
    if joints is None:
        raise Refusal(
            "impossible",
            f"Sticks of {show.text(given.stick)} don’t reach from one joint to the next in "
            f"{_MOST_JOINTS} joints or fewer.",
            "Use longer sticks or a shorter scarf, or leave the spacing blank.",
            field="stick",
        )
    return joints


def _piece(show, given, number, stretch, scarf):
    """A piece from one joint (or end) to the next: at its left it laps over its neighbor's face."""
    start, stop = stretch
    none, lap = Fraction(0), scarf.overlap
    left = EdgeCut(none, none) if start == 0 else EdgeCut(scarf.degrees, lap)
    right = EdgeCut(none, none) if stop == given.run else EdgeCut(-scarf.degrees, -lap)
    back = stop - start - (left.adds + right.adds) / 2
    face = back + left.adds + right.adds
    name = f"Piece {number} from the left"
    left_end, right_end = edge_ends((left, right))
    return Part(
        key=f"piece_{number}",
        name=name,
        length=back + left.adds,
        thickness=given.thickness,
        left=left_end,
        right=right_end,
        long_side=max(back, face),
        short_side=min(back, face),
        drawing=edge_piece(show, name, given.thickness, back, (left, right)),
    )


RECKONER = Reckoner(
    key="scarf",
    title="Scarf joint over a long run",
    asks="The run is longer than the stick. Where do I scarf it?",
    words=(
        "scarf joint, scarf, splice, long run, join, butt two lengths together, baseboard, "
        "molding, trim, stud, bevel, overlap, length"
    ),
    order=260,
    job="molding",
    picture={"wood": "M3 15h19L14 25H3zM26 15h11v10H18z", "chalk": "M27 10L13 30"},
    basic=("run", "stick", "thickness", "cut", "angle", "slope"),
    fields=(
        length(
            "run", "Run", help="End to end, with both ends cut square.", least="1 in", most="200 ft"
        ),
        length("stick", "Stick length", help="As sold.", least="1 in"),
        length(
            "thickness",
            "Thickness",
            help="Back to face, where the scarf cuts.",
            default="3/4 in",
            metric="18 mm",
            least="1/16 in",
            most="6 in",
        ),
        choice("cut", "Scarf", _CUTS),
        angle(
            "angle",
            "Angle",
            help="What the saw’s scale reads: 0 is square.",
            least="5",
            most=str(_STEEPEST),
            shown_when=("cut", ("other",)),
        ),
        count(
            "slope",
            "Slope, 1 in",
            help="How much run per 1 of thickness.",
            default="8",
            least="1",
            most="12",
            shown_when=("cut", ("slope",)),
        ),
        length(
            "spacing",
            "Stud or block spacing",
            help="On center. Joints land on one.",
            least="1 in",
            most="10 ft",
            **blank("All pieces come out alike, with blocks behind the joints."),
        ),
        length(
            "first",
            "First stud",
            help="From the left end of the run to the center of the first stud.",
            most="10 ft",
            **blank("One spacing from the left end."),
        ),
        kerf(help="Taken at both ends of each piece. Measure a cut in scrap."),
    ),
    answers=(
        Answer("first", "First joint, from the left end to its center", must="agree"),
        Answer("joints", "Joint centers, from the left end", "lengths", must="agree"),
        Answer("pieces", "Pieces, tip to tip", "lengths", must="agree"),
        Answer("overlap", "Overlap per joint", must="agree"),
        Answer("face", "Cut face, edge to edge", must="agree"),
        Answer("setting", "Miter angle", "angle", sets="turned"),
        Answer("extra", "Extra length for all joints", must="reach"),
        Answer("stock", "Stock, with kerfs", must="reach"),
        Answer("count", "Sticks, one per piece", "count"),
    ),
    source=(
        "Overlap = thickness × tan(angle), face = thickness ÷ cos(angle): plane trigonometry. "
        "Joints over a stud, and as few as possible: shop practice."
    ),
    compute=compute,
    example={
        "run": "141 3/8",
        "stick": "96",
        "thickness": "5/8",
        "cut": "45",
        "spacing": "16",
        "first": "14 1/2",
    },
    makes_parts=True,
)
