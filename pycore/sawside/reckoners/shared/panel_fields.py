"""Sheet goods: as what a panel is sold, and what to say of the thickness that was measured."""

from sawside.lengths.fine import fine_text
from sawside.reckoners.fields import choice
from sawside.wood.numbers import size_text
from sawside.wood.sold_sizes import PLYWOOD

SOLD_AS = choice(
    "sold_as",
    "Shelf sold as",
    {"": "Something else, or not sure"}
    | {key: f"{size.name} structural plywood" for key, size in PLYWOOD.items()},
    help="Just to check your measurement against PS 1.",
    default="",
)


def limits_text(size, show):
    """The limits of a plywood size as they are printed, in decimals: "from 0.688″ to 0.75″"."""
    least, most = (size_text(size.figures[each], show) for each in ("least", "most"))
    return f"from {least} to {most}"


def outside(size, measured):
    """Whether a thickness is one that the size may not have."""
    return not size.figures["least"] <= measured <= size.figures["most"]


def thickness_warnings(given, measured, show):
    """What is worth saying of a measured thickness, a sentence each.

    Nothing where the panel is not sold as structural plywood.
    """
    size = PLYWOOD.get(given.sold_as)
    if size is None:
        return
    text, limits = fine_text(measured, show), limits_text(size, show)
    if outside(size, measured):
        yield (
            f"{text} is outside the PS 1 limits for {size.name} structural plywood, {limits}. "
            "Measure again in several spots, or check what it’s sold as."
        )
    else:
        yield (f"Sold as {size.name}: {limits} (PS 1). Measure every sheet and cut to that.")
