"""Dowels between the end of a rail and the edge of a stile: where, how deep, and the stop."""

from sawside.drawing.case.dowels import dowels_drawing
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.words import counted
from sawside.reckoners.case.shared.dowels.cautions import cautions
from sawside.reckoners.case.shared.dowels.fields import FIELDS
from sawside.reckoners.case.shared.dowels.joint import joint_of
from sawside.reckoners.case.shared.dowels.test_hole import in_brief, over_by, tested
from sawside.reckoners.case.shared.dowels.working import working
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.shared.numbered import numbered


def compute(given, show):
    """The centers from both edges and from the face, the depth, the stop, and the wood left."""
    joint = joint_of(given, show)
    return Reckoning(
        answers={
            "centers": numbered("Dowel", joint.centers),
            "mirrored": numbered("Dowel", joint.mirrored),
            "from_face": on_fine_marks(joint.from_face, show),
            "dowels": len(joint.centers),
            "bit": on_fine_marks(joint.diameter, show),
            "dowel_length": on_fine_marks(joint.length, show),
            "depth": on_fine_marks(joint.depth, show, "reach"),
            "stop": on_fine_marks(joint.depth + joint.guide, show, "reach"),
            **tested(given, show, joint),
            **_wood_left(given, show, joint),
        },
        working=tuple(working(given, show, joint)),
        drawing=dowels_drawing(show, given, joint, _words(show, joint)),
        cautions=tuple(cautions(given, show, joint)),
        verdict=_verdict(given, show, joint),
    )


def _wood_left(given, show, joint):
    """The answers about what wood is left around the holes."""
    left = {"beyond": joint.beyond, "at_edge": joint.at_edge}
    if given.both == "yes":
        left["between"] = joint.between
    if joint.spacing is not None:
        left["apart"] = joint.spacing - joint.diameter
    answers = {key: on_fine_marks(length, show, "be there") for key, length in left.items()}
    faces = [on_fine_marks(each, show, "be there") for each in joint.at_faces]
    return answers | {"at_faces": list(zip(("Face", "Back"), faces, strict=True))}


def _verdict(given, show, joint):
    """Which dowels, and what the drill is set to."""
    bit, long = (show.bare(on_fine_marks(each, show)) for each in (joint.diameter, joint.length))
    depth, stop = (
        show.bare(on_fine_marks(each, show, "reach"))
        for each in (joint.depth, joint.depth + joint.guide)
    )
    stopped = f", stop {stop}" if joint.guide else ""
    over = over_by(given, show, joint)
    tested = "" if over is None else f"; {in_brief(over, show)}"
    return f"Dowel centers ({bit} × {long}; holes {depth} deep{stopped}{tested})"


def _words(show, joint):
    depth = show.brief(on_fine_marks(joint.depth, show, "reach"))
    centers = ", ".join(show.brief(each) for each in joint.centers)
    return (
        f"A stile with {counted(len(joint.centers), 'hole')} {depth} deep from its edge. Beside it "
        f"that edge and the end of the rail with the same holes, their centers {centers} from "
        "the reference edge."
    )


RECKONER = Reckoner(
    key="dowel_layout",
    title="Dowel layout",
    asks="Where do the dowels go, how deep are the holes, and where is the drill stop?",
    words=(
        "dowel, dowels, doweling, dowel joint, dowel holes, dowel size, dowel diameter, dowel "
        "length, dowel depth, dowel spacing, doweling jig, drill stop, stop collar, hole depth, "
        "drill depth, test hole, hole too deep, face frame joint"
    ),
    order=650,
    job="cases",
    picture={
        "wood": "M4 4h12v32H4zM24 12h13v16H24z",
        "ink": "M16 16h-6v2h6M16 22h-6v2h6",
        "chalk": "M16 17h8M16 23h8",
    },
    basic=("rail", "thickness", "stile", "diameter", "dowel_length"),
    fields=FIELDS,
    answers=(
        Answer("centers", "Centers, from the reference edge", "lengths", must="agree"),
        Answer("mirrored", "Centers, from the other edge", "lengths", must="agree"),
        Answer("from_face", "Centers, from the face", must="agree"),
        Answer("dowels", "Dowels", "count"),
        Answer("bit", "Drill bit", must="agree"),
        Answer("dowel_length", "Dowel length", must="agree"),
        Answer("depth", "Hole depth, both parts", must="reach"),
        Answer("stop", "Drill stop", must="reach"),
        Answer("off", "Test hole off by", must="agree"),
        Answer("move", "After the test hole", "text"),
        Answer("beyond", "Wood left past the hole, in the stile", must="be there"),
        Answer("between", "Wood left between holes from both sides", must="be there"),
        Answer("at_edge", "Wood left at the rail’s edge", must="be there"),
        Answer("apart", "Wood left between two dowels", must="be there"),
        Answer("at_faces", "Wood left at each face", "lengths", must="be there"),
    ),
    source=(
        "Arithmetic: depth = half the dowel + glue room, stop = depth + guide. Glue room of 1/16″ "
        "in each hole: a 19th-century workshop handbook (Dowelling) cuts a dowel 1/8″ shorter than "
        "both holes; a later magazine allows 1/32″ (read in a secondary copy). Common practice, no "
        "source: a dowel of a third to a half of the thickness, common sizes, an inset of a "
        "quarter of the rail, no more than 3″ on center, two diameters deep or more, 1/8″ left "
        "past a hole."
    ),
    compute=compute,
    example={
        "rail": "2 1/4",
        "thickness": "3/4",
        "stile": "1 3/4",
        "diameter": "3/8",
        "dowel_length": "1 1/2",
        "guide": "1 1/8",
    },
)
