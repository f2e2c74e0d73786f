"""Where the parts go that no joint in a panel holds: butted ones, and the toe kick."""

from sawside.lengths.words import listed
from sawside.reckoners.case.shared.carcass.as_measured import measured_text


def places(panel, sizes, show):
    """The sentences about a panel's neighbors; nothing where its joints say it."""
    if panel.key == "kick":
        recess = show.brief(sizes.recess)
        yield (
            f"Between the sides, its face at the back of the notch, {recess} from the front of the "
            "case."
        )
        yield "Cut it a hair under its height if the floor is crowned."
    if sizes.joint:
        return
    if panel.key == "side":
        yield from _on_a_side(sizes, show)
    if panel.key in ("top", "bottom"):
        yield from _on_a_level(panel, sizes, show)
    if panel.key in ("side", "divider") and sizes.fixed:
        floor = sizes.floor if panel.key == "side" else 0
        told = listed([measured_text(floor + low, show) for low in sizes.heights.lows])
        one = sizes.fixed == 1
        face = "Fixed shelf: its lower face" if one else "Fixed shelves: their lower faces"
        yield f"{face} {told} from the bottom end."


def _on_a_side(sizes, show):
    low = sizes.kick_height - sizes.foot
    if low:
        yield f"Bottom: its lower face {measured_text(low, show)} from the bottom end."
    else:
        yield "Bottom: flush with the bottom end."
    yield "Top: on the top end." if sizes.top == "over" else "Top: flush with the top end."


def _on_a_level(panel, sizes, show):
    inside = (panel.length - sizes.inside_width) / 2
    if inside:
        yield "Sides: under its ends, flush with them."
    for number, start in enumerate(sizes.bay_starts[1:], 1):
        name = "Divider" if sizes.dividers == 1 else f"Divider {number}"
        place = measured_text(inside + start - sizes.thickness, show)
        yield f"{name}: its left face {place} from the left end."
