"""What is said beside doors: of the router, the glass, the saw, and of wood that moves."""

from fractions import Fraction

from sawside.lengths.fine import fine_text
from sawside.reckoners.doors.shared.doors.seasons import frame_swells, short_lap
from sawside.reckoners.wood.shared.moisture_fields import cautions as wood_cautions
from sawside.wood.caution import Caution
from sawside.wood.saw import cautions_at_the_saw

_ENOUGH = Fraction(1, 8)
_ROUTED = Caution(
    "Never rout a narrow rail freehand.",
    "Never rout a narrow rail freehand. Cope rail ends on a sled or with a backer block, or cope a "
    "wide board and rip the rails from it. Keep your fingers away from the bit, use the guard, and "
    "follow the instructions for the bit’s speed. Test on scrap.",
)
_TENONED = Caution(
    "Hold the part in a jig or gauge.",
    "Cut tenons, laps and grooves with the part held by a jig, gauge or push block, never "
    "freehand, and keep the guard the saw or router maker calls for. Test the fit in scrap.",
)
_GLASS = Caution(
    "Glass: wear gloves, and use safety glass.",
    "Wear cut-resistant gloves and eye protection: cut edges are sharp. Use tempered or laminated "
    "safety glass in a door, above all where someone could fall against it; local codes and the "
    "glass shop come first. Order it after the frame is made. Hold it with stops or clips, not "
    "with glue alone, and give it hinges for its weight.",
)
_MEASURE = Caution(
    "Measure the opening in several spots.",
    "Measure the opening in several spots and across the corners. Make the door to the smallest "
    "size, and don’t cut it before the case is glued up.",
)
_STUB = Caution(
    "A stub tenon alone holds little.",
    "A stub tenon alone holds little: a glued plywood panel makes its frame strong. With solid "
    "wood or glass, cut longer tenons or add dowels (shop practice).",
)
_JOINTS = {"cope": _ROUTED, "stub": _TENONED, "mortise": _TENONED, "lap": _TENONED}


def cautions(given, show, doors, frame, panel, parts):
    """Every caution of these doors, what may be wrong with them first."""
    yield from short_lap(given, show, doors)
    yield from frame_swells(given, show, doors, frame)
    if panel is not None and panel.held is not None and panel.held < _ENOUGH:
        yield (
            f"At its driest, less than {fine_text(_ENOUGH, show)} of each edge of the panel is "
            "held (shop practice). Cut the groove deeper."
        )
    if given.made == "solid":
        yield (
            "A wide solid slab cups as well as moves. Add battens in slots or breadboard ends, or "
            "make it a frame and panel."
        )
    if given.joint == "stub" and given.made in ("wood", "glass"):
        yield _STUB
    yield from (_GLASS,) if given.made == "glass" else ()
    yield from (_JOINTS[given.joint],) if given.joint in _JOINTS else ()
    yield from wood_cautions(doors.board) if doors.board else ()
    wood = [each for each in parts if each.key != "glass"]
    yield from cautions_at_the_saw(
        *(each.length.mark for each in wood), *(each.width.mark for each in _sheets(wood))
    )
    yield _MEASURE


def _sheets(parts):
    """The parts of which the width is crosscut as well."""
    return [each for each in parts if each.key in ("slab", "panel")]
