"""What no doweled joint may be: too thick a dowel, one that comes through, holes that meet."""

from fractions import Fraction

from sawside.errors import impossible
from sawside.lengths.fine import fine_text, limit_text

_SHORT_OF_NAME = Fraction(1, 64)


def refuse_too_thick(given, show):
    """ "impossible" above half of the stock's thickness (common practice, no source).

    Panels run a 32nd under the size they are called by: half of that is let pass, so that a 3/8
    dowel goes into 23/32 stock as into 3/4.
    """
    stock, half = fine_text(given.thickness, show), fine_text(given.thickness / 2, show)
    if given.diameter > given.thickness / 2 + _SHORT_OF_NAME:
        raise impossible(
            f"A {fine_text(given.diameter, show)} dowel is thicker than half of {stock} stock, "
            f"{half}: the walls of the hole would be too thin (shop practice).",
            f"Use a dowel of {half} or less.",
            "diameter",
        )


def refuse_no_common_diameter(given, show, thin, fitting):
    """ "impossible" where no common dowel is thin enough for the stock, or for the rail's width.

    `thin` are those for the stock, thickest first, `fitting` those of them for the rail.
    """
    stock, half = fine_text(given.thickness, show), fine_text(given.thickness / 2, show)
    if not thin:
        raise impossible(
            f"No common dowel is as thin as half of {stock} stock, {half}.",
            f"Enter a diameter of {half} or less, or use thicker stock.",
            "thickness",
        )
    if not fitting:
        least, thinnest = fine_text(2 * thin[-1], show), fine_text(thin[-1], show)
        raise impossible(
            f"A rail {fine_text(given.rail, show)} wide is too narrow: the thinnest common dowel, "
            f"{thinnest}, needs {least} (shop practice).",
            f"Use a rail of {least} or more, or enter a thinner dowel.",
            "rail",
        )


def refuse_inset_past_the_middle(given, show):
    """ "impossible" where the dowel nearest to an edge would be nearer to the other one."""
    if given.inset is not None and 2 * given.inset > given.rail:
        half = limit_text(given.rail / 2, show, "stay under")
        raise impossible(
            f"An inset of {fine_text(given.inset, show)} is more than half of a rail "
            f"{fine_text(given.rail, show)} wide.",
            f"Enter {half} or less.",
            "inset",
        )


def refuse_no_common_length(given, show):
    """The refusal where every common length comes too near the far edge of the stile, or the hole
    from there."""
    dowel = "dowel" if given.diameter is None else f"{fine_text(given.diameter, show)} dowel"
    sides = " from both sides" if given.both == "yes" else ""
    return impossible(
        f"No common {dowel} fits in a stile {fine_text(given.stile, show)} wide{sides}.",
        "Use a wider stile, or enter a shorter dowel length.",
        "stile",
    )


def refuse_coming_through(given, show, joint):
    """ "impossible" where a hole comes out of the stile's far edge, or meets one from there."""
    deep, wide = fine_text(joint.depth, show), fine_text(joint.stile, show)
    if joint.beyond <= 0:
        raise impossible(
            f"A hole {deep} deep comes through a stile {wide} wide.",
            "Use shorter dowels or a wider stile.",
            "dowel_length",
        )
    if given.both == "yes" and joint.between <= 0:
        raise impossible(
            f"Holes {deep} deep from both sides meet in a stile {wide} wide.",
            f"Keep each hole less than {fine_text(joint.stile / 2, show)} deep: use shorter "
            "dowels or a wider stile.",
            "dowel_length",
        )


def refuse_breaking_out(given, show, joint):
    """ "impossible" where holes break out of a face or an edge, or run into each other."""
    bit, half = fine_text(joint.diameter, show), joint.diameter / 2
    if min(joint.at_faces) <= 0:
        raise impossible(
            f"A {bit} hole {fine_text(joint.from_face, show)} from the face breaks out of stock "
            f"{fine_text(joint.thickness, show)} thick.",
            f"Keep its center more than {fine_text(half, show)} from both faces.",
            "from_face",
        )
    if joint.at_edge <= 0:
        raise impossible(
            f"A {bit} hole {fine_text(joint.inset, show)} from the edge breaks out of a rail "
            f"{fine_text(joint.rail, show)} wide.",
            f"Keep its center more than {fine_text(half, show)} from both edges, or use a "
            "thinner dowel.",
            "diameter" if given.inset is None else "inset",
        )
    if joint.spacing is not None and joint.spacing <= joint.diameter:
        crowded = given.inset is not None and joint.rail - 2 * joint.inset <= joint.diameter
        raise impossible(
            f"{len(joint.centers)} holes of {bit} run into each other in a rail "
            f"{fine_text(joint.rail, show)} wide.",
            "Use fewer or thinner dowels, or a smaller inset.",
            "inset" if crowded else "diameter" if given.count is None else "count",
        )
