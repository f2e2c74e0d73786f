"""What is said of a case beside its parts: what can hurt, and joints that leave little wood."""

from sawside.reckoners.case.shared.carcass.as_measured import measured_text
from sawside.wood.caution import Caution

_TIPS = Caution(
    "A tall case can tip: fasten it to the wall.",
    "A tall case can tip. Fasten it to a stud, follow the anchor’s instructions and local code, "
    "and keep heavy things low.",
)
_SHEETS = Caution(
    "Support both pieces of a cut.",
    "Support the whole sheet, and both pieces of the cut, so neither can bind the blade. The saw "
    "maker’s instructions come first.",
)
_DADOES = Caution(
    "Use a dado set only on a saw built for it.",
    "Use a dado set only on a saw built for it. Fit the guard and insert the maker calls for, "
    "unplug before you change it, and use push blocks.",
)
_BOTTOM_OUT = (
    "bottom out in their joints. That’s what makes the outside width: test the depth and the width "
    "of a joint in an offcut of the same sheet."
)


def cautions(sizes, material, show):
    """The usual ones, behind what this case has of its own."""
    if material.weight is None:
        yield f"There’s no weight on file for {material.spoken}, so the case’s isn’t figured."
    half = sizes.thickness / 2
    for name, deep in (("joint", sizes.joint), (sizes.back, sizes.seat)):
        if deep > half + sizes.thickness / 16:
            left = measured_text(sizes.thickness - deep, show)
            yield f"The {name} takes more than half the thickness: only {left} is left."
    web = sizes.thickness - 2 * sizes.joint
    if sizes.joint and sizes.dividers and sizes.fixed and web < sizes.thickness / 4:
        yield (
            f"Only {measured_text(web, show)} of a divider is left between its dadoes. Cut them no "
            "deeper than a third of its thickness (shop practice)."
        )
    below = sizes.kick_height - sizes.foot
    if sizes.joint and 0 < below < sizes.thickness:
        yield (
            f"There’s only {show.text(below)} of wood under the bottom’s dado. It could break out "
            "(shop practice)."
        )
    yield _TIPS
    yield _SHEETS
    if sizes.joint or sizes.seat:
        yield _DADOES
    if sizes.joint:
        yield f"{'All but the back' if sizes.seat else 'Parts'} {_BOTTOM_OUT}"
