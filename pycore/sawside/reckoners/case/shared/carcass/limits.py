"""What a case can't be built as: a joint through its part, a kick or shelf without room."""

from sawside.errors import Refusal
from sawside.reckoners.case.shared.carcass.as_measured import measured_text


def refuse_impossible(sizes, show):
    """ "impossible" for the first thing that can't be cut, by the field to change."""
    for field, fault, message, remedy in (
        *_joints(sizes, show),
        *_kick(sizes, show),
        *_shelves(sizes, show),
    ):
        if fault:
            raise Refusal("impossible", message, remedy, field=field)


def _joints(sizes, show):
    thick, deep = measured_text(sizes.thickness, show), measured_text(sizes.joint, show)
    yield (
        "joint_depth",
        sizes.joint >= sizes.thickness,
        f"A joint {deep} deep goes through a part that’s {thick} thick.",
        "Enter a smaller joint depth; a third of the thickness is usual.",
    )
    half = measured_text(sizes.thickness / 2, show)
    yield (
        "joint_depth",
        sizes.dividers and sizes.fixed and 2 * sizes.joint >= sizes.thickness,
        f"Dadoes {deep} deep from both faces of a divider meet: half its thickness is {half}.",
        f"Enter a joint depth under {half}.",
    )
    yield (
        "groove_depth" if sizes.back == "groove" else "rabbet_depth",
        sizes.seat >= sizes.thickness,
        f"A {sizes.back} {measured_text(sizes.seat, show)} deep goes through a part that’s {thick} "
        "thick.",
        "Enter a smaller depth; half the thickness is the most that’s usual.",
    )
    yield (
        "back_room",
        sizes.seat and sizes.room >= sizes.seat,
        f"With {measured_text(sizes.room, show)} of room, the back could drop out of its "
        f"{sizes.back}, which is {measured_text(sizes.seat, show)} deep.",
        f"Enter less room around the back, or a deeper {sizes.back}.",
    )


def _kick(sizes, show):
    """The recess from edging to back, with the board or the frame that has to fit behind it."""
    boards = {"none": 0, "notched": 1, "base": 2}[sizes.kick] * sizes.thickness
    rear = sizes.rear if sizes.kick == "notched" else sizes.depth
    yield (
        "recess",
        boards and sizes.recess + boards >= rear,
        f"A recess of {show.text(sizes.recess)} leaves no room for the toe kick in a case "
        f"{show.text(sizes.depth)} deep.",
        "Enter a smaller recess or a deeper case.",
    )
    yield (
        "recess",
        sizes.kick == "notched" and sizes.recess <= sizes.front,
        f"The edging is {measured_text(sizes.front, show)} thick, so a recess of "
        f"{show.text(sizes.recess)} cuts no notch.",
        "Enter a bigger recess or thinner edging.",
    )
    yield (
        "end_recess",
        sizes.kick == "base" and 2 * sizes.end_recess + 3 * sizes.thickness >= sizes.width,
        f"End recesses of {show.text(sizes.end_recess)} leave no room for the base.",
        "Enter a smaller end recess.",
    )


def _shelves(sizes, show):
    clear, shelves = sizes.inside_depth, sizes.fixed + sizes.adjustable
    yield (
        "band",
        clear <= sizes.front,
        f"Edging {show.text(sizes.front)} thick leaves nothing of the depth inside.",
        "Enter thinner edging or a deeper case.",
    )
    yield (
        "setback" if sizes.setback else "band",
        shelves and clear <= sizes.shelf_front,
        f"The setback and edging of a shelf take up {show.text(sizes.shelf_front)}, but the inside "
        f"depth is {show.text(clear)}.",
        "Enter a smaller setback or thinner edging.",
    )
    yield (
        "fixed" if sizes.fixed else "adjustable",
        shelves * sizes.shelf_thickness >= sizes.inside_height,
        f"The shelves in a bay take up {show.text(shelves * sizes.shelf_thickness)}, but the "
        f"inside height is {show.text(sizes.inside_height)}.",
        "Use fewer or thinner shelves.",
    )
    yield (
        "gap",
        sizes.adjustable and 2 * sizes.gap >= min(sizes.bays),
        f"Two gaps of {show.text(sizes.gap)} leave nothing of a shelf in a bay "
        f"{show.text(min(sizes.bays))} wide.",
        "Enter a smaller gap or wider bays.",
    )
