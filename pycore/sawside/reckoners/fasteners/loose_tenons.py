"""Biscuits or loose tenons along a joint: how many, where, and how deep their slots are."""

from fractions import Fraction

from sawside.drawing.fasteners.slots import slots_drawing
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fasteners.shared.slots.cut import slots_of
from sawside.reckoners.fasteners.shared.slots.fields import FIELDS
from sawside.reckoners.shared.numbered import numbered
from sawside.wood.caution import Caution

_LEAST_LEFT = Fraction(1, 8)
_MOST_LINES = 6
_ALWAYS = (
    Caution(
        "Clamp the part to cut its slots, and wear eye protection.",
        "Clamp the part to cut its slots, wear eye protection, and keep both hands on the machine, "
        "never near its cutter. Its maker’s instructions come first.",
    ),
    Caution(
        "Cut both parts from the same face.",
        "Cut both parts from the same face, and dry-fit them before you glue. Follow the glue’s "
        "instructions for clamping.",
    ),
)


def compute(given, show):
    """The centers from the joint's end, the depth, and the wood left around a slot. Inches."""
    slots = slots_of(given, show)
    depth = on_fine_marks(slots.depth, show, "reach")
    faces = [on_fine_marks(each, show, "be there") for each in slots.at_faces]
    answers = {
        "centers": numbered("Slot", slots.centers),
        "depth": depth,
        "from_face": on_fine_marks(slots.from_face, show),
        "at_faces": list(zip(("Face", "Back"), faces, strict=True)),
    }
    if slots.behind is not None:
        answers["behind"] = on_fine_marks(slots.behind, show, "be there")
    return Reckoning(
        answers=answers,
        working=tuple(_working(given, show, slots)),
        drawing=slots_drawing(show, given, slots),
        cautions=(*_warned(given, show, slots), *_ALWAYS),
        verdict=f"{counted(len(slots.centers), 'slot')} {show.bare(depth)} deep, centers",
    )


def _working(given, show, slots):
    number = show.number
    long, inset, steps = number(given.long), number(given.inset), len(slots.centers) - 1
    if steps:
        apart = number(slots.apart)
        yield f"On center: ({long} − 2 × {inset}) ÷ {steps} = {apart}"
        for at, center in enumerate(slots.centers[:_MOST_LINES]):
            yield f"Slot {at + 1}: {inset} + {at} × {apart}{show.equals(center)}"
    else:
        yield f"One slot, centered: {long} ÷ 2{show.equals(slots.centers[0])}"
    depth = number(slots.depth)
    yield f"Depth: {number(given.across)} ÷ 2 + {number(given.play)} = {depth}"
    stock, thick, face = (number(each) for each in (given.thickness, given.thick, slots.from_face))
    if given.from_face is None:
        yield f"Center from the face: {stock} ÷ 2 = {face}"
    front, back = (number(each) for each in slots.at_faces)
    yield f"Left at the face: {face} − {thick} ÷ 2 = {front}"
    yield f"Left at the back: {stock} − {face} − {thick} ÷ 2 = {back}"
    if slots.behind is not None:
        yield f"Left under a slot: {number(given.behind)} − {depth} = {number(slots.behind)}"


def _warned(given, show, slots):
    if 2 * given.thick > given.thickness:
        yield (
            f"A slot {fine_text(given.thick, show)} thick is more than half of the stock. A third "
            "is usual (shop practice)."
        )
    if slots.behind is not None and slots.behind < _LEAST_LEFT:
        told = show.text(on_fine_marks(slots.behind, show, "be there"))
        yield f"Only {told} of wood is left under a slot: it could show or break through."
    if len(slots.centers) == 1:
        yield "One slot lets the parts twist. Use two where they fit."


RECKONER = Reckoner(
    key="loose_tenons",
    title="Loose tenons and biscuits",
    asks="How many biscuits or loose tenons does this joint take, and where?",
    words=(
        "loose tenon, loose tenons, biscuit, biscuits, biscuit joint, plate joint, floating tenon, "
        "biscuit spacing, slots"
    ),
    order=840,
    job="screws and hinges",
    picture={
        "wood": "M3 4h34v13H3zM3 23h34v13H3z",
        "ink": "M9 20c2-6 9-6 11 0c-2 6-9 6-11 0zM24 20c2-6 9-6 11 0c-2 6-9 6-11 0z",
        "chalk": "M14.5 12v16M29.5 12v16",
    },
    basic=("long", "thickness", "along", "across"),
    fields=FIELDS,
    answers=(
        Answer("centers", "Centers, from the joint’s end", "lengths", must="agree"),
        Answer("depth", "Slot depth, both parts", must="reach"),
        Answer("from_face", "Centers, from the face", must="agree"),
        Answer("at_faces", "Wood left at each face", "lengths", must="be there"),
        Answer("behind", "Wood left under a slot", must="be there"),
    ),
    source=(
        "Arithmetic: depth = half of what goes across + glue room. Common practice, no source: "
        "no more than 8 in on center, 2 1/2 in from an end, a third of the thickness, 1/8 in left "
        "under a slot. The sizes to start with are those of a common biscuit, from memory: "
        "measure your own, or the slot that your cutter makes."
    ),
    compute=compute,
    example={"long": "15 1/4", "thickness": "3/4", "behind": "3/4"},
)
