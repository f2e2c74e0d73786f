"""What is said beside a doweled joint: what is weak, how both parts are marked, drilled, glued."""

from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.reckoners.case.shared.dowels.joint import LEFT_BEYOND
from sawside.wood.caution import Caution

_ALWAYS = (
    Caution(
        "Mark both parts from the same edge, inside face down.",
        "Mark both parts from the same edge, inside face down, and drill both from the same face. "
        "Then a center that’s off the middle is off the same way in both.",
    ),
    Caution(
        "Set the stop from the bit’s full width.",
        "Set the stop from the full width of the bit, not from its point, which goes deeper. Drill "
        "scrap first, measure the hole, and enter that as Test hole depth.",
    ),
    Caution(
        "Clamp the part before you drill it.",
        "Clamp the part before you drill it, wear eye protection, and keep your free hand away "
        "from the bit. The instructions for the drill and the doweling guide come first.",
    ),
    Caution(
        "Dry-fit the joint before you glue it.",
        "Dry-fit the joint before you glue it. Use fluted or grooved dowels, no damper than the "
        "stock, so air and glue get out. Follow the glue’s instructions for clamping.",
    ),
)


def cautions(given, show, joint):
    """Every caution of this joint, what may be weak first."""
    yield from _of_the_stile(given, show, joint)
    yield from _of_the_rail(show, joint)
    if given.play == 0:
        yield (
            "With no glue room the dowel bottoms out before the joint closes. Leave a little at "
            "the bottom of each hole."
        )
    yield from _ALWAYS


def _left(length, show):
    return show.text(on_fine_marks(length, show, "be there"))


def _of_the_stile(given, show, joint):
    least = fine_text(LEFT_BEYOND, show)
    if joint.beyond < LEFT_BEYOND:
        yield (
            f"Only {_left(joint.beyond, show)} of the stile is left past the hole. Leave {least} "
            "or more (shop practice): the bit’s point goes deeper yet."
        )
    if given.both == "yes" and joint.between < LEFT_BEYOND:
        yield (
            f"Only {_left(joint.between, show)} is left between the holes from both sides. Leave "
            f"{least} or more (shop practice)."
        )
    if joint.length / 2 < 2 * joint.diameter:
        yield (
            f"Each half of the dowel goes in {fine_text(joint.length / 2, show)}, less than two "
            "diameters. Use a longer one (shop practice)."
        )


def _of_the_rail(show, joint):
    if 3 * joint.diameter < joint.thickness:
        yield (
            f"A {fine_text(joint.diameter, show)} dowel is less than a third of the thickness. A "
            "third to a half is usual (shop practice)."
        )
    if min(joint.at_faces) < LEFT_BEYOND:
        yield (
            f"Only {_left(min(joint.at_faces), show)} of wood is left at a face. The hole could "
            "bulge or split it."
        )
    if joint.at_edge < joint.diameter / 2:
        yield (
            f"Only {_left(joint.at_edge, show)} of wood is left at the rail’s edge, less than half "
            "the dowel. It could split out (shop practice)."
        )
    if joint.spacing is None:
        yield "One dowel lets the rail twist. Use two where they fit, thinner ones if need be."
    elif joint.spacing < joint.diameter * 3 / 2:
        yield (
            f"Only {_left(joint.spacing - joint.diameter, show)} of wood is left between two "
            "holes. Use fewer or thinner dowels."
        )
