"""The working of a sagging shelf: its load, its own weight, its section, its sag."""

from fractions import Fraction

from sawside.wood.loads import load_text, weight_text
from sawside.wood.numbers import number_text, size_text
from sawside.wood.plate_ratios import ratios_of

PLATE_SOURCE = (
    "A shelf with strips or a cleat: the board as an orthotropic plate, the strips as beams along "
    "its edges, the shape of least energy (S. Timoshenko and S. Woinowsky-Krieger, Theory of "
    "Plates and Shells, 1959, chapter 11, from memory); Poisson's ratio is left out."
)


def load_told(shelf):
    """The load in all, and along the shelf where it stands evenly."""
    told = f"{weight_text(shelf.pounds)} in all"
    along = shelf.spread == "even"
    return f"{told}, {load_text(shelf.pounds / shelf.long)}" if along else told


def load_and_own_weight(shelf):
    """The same, and what the shelf weighs itself where that is known."""
    told, own = load_told(shelf), sum(shelf.own_weights)
    if not own:
        return told
    return f"{told}; its own weight is {weight_text(own)}"


def _weighs(shelf, own):
    """What the section carries, as it goes into the formula."""
    load = number_text(shelf.pounds, 1)
    if not own:
        return f"{load} lb"
    if shelf.spread != "even":
        return f"{load} lb, and {number_text(own, 1)} lb evenly"
    return f"{load} + {number_text(own, 1)} lb"


def _own_weight(case, shelf, show):
    """The working of what the shelf weighs itself, a line for each part that has a weight."""
    parts = zip(case.materials, shelf.section.parts, shelf.own_weights, strict=False)
    for (name, made_of), part, own in parts:
        if own:
            long, breadth, height = (
                size_text(each, show) for each in (shelf.long, part.breadth, part.height)
            )
            yield (
                f"{name}'s own weight: {long} × {breadth} × {height} at "
                f"{number_text(made_of.weight.most, 1)} lb for each cubic foot = "
                f"{weight_text(own)}"
            )


def shelf_working(case, shelf, show):
    """The working: the section, its bending stiffness, the sag at once and after years."""
    section, own = shelf.section, sum(shelf.own_weights)
    lines = [f"Load: {load_told(shelf)}"]
    if shelf.cleat:
        lines.append("The cleat holds the back edge level, all along")
    lines += _own_weight(case, shelf, show)
    for name, part in zip(("Board", "Strip"), section.parts, strict=False):
        breadth, height, middle = (
            size_text(each, show) for each in (part.breadth, part.height, part.middle)
        )
        lines.append(
            f"{name}: E = {number_text(part.stiffness)} psi, {breadth} × {height}, its middle "
            f"{middle} below the top"
        )
    weighs = _weighs(shelf, own)
    lines += _plate_sag(shelf, show, weighs) if shelf.plate else _beam_sag(shelf, show, weighs)
    lines.append(
        f"After years: {size_text(shelf.sag, show)} × {number_text(case.creep, 2)} = "
        f"{size_text(shelf.sag * case.creep, show)}"
    )
    return tuple(lines)


def _beam_sag(shelf, show, weighs):
    """The sag of a shelf that bends as one beam."""
    section = shelf.section
    if len(section.parts) > 1:
        yield f"Neutral axis: Σ E·A·y ÷ Σ E·A = {size_text(section.axis, show)} below the top"
    yield (
        f"E·I = Σ E·(b·h³ ÷ 12 + b·h·(y − axis)²) = {number_text(section.bending)} lb·in²; "
        f"G·A′ = E ÷ 16 × 5/6 × b·h = {number_text(section.shear)} lb"
    )
    if shelf.supports == "overhanging":
        yield (
            f"Sag at once, by the formulas for a beam that stands over, W = {weighs}: "
            f"{size_text(shelf.sag, show)}"
        )
        return
    yield (
        f"Sag at once: kb·W·L³ ÷ (E·I) + ks·W·L ÷ (G·A′) with W = {weighs}, "
        f"L = {size_text(shelf.span, show)} = {size_text(shelf.sag, show)}"
    )


def _plate_sag(shelf, show, weighs):
    """The sag of the edges of a shelf that bends as a plate with its strips."""
    along = shelf.stiffness * shelf.thickness**3 / 12
    yield (
        f"Board as a plate, along it: {number_text(shelf.stiffness)} × "
        f"{number_text(shelf.thickness, 4)}³ ÷ 12 = {number_text(along)} lb·in"
    )
    for name, part in (("across it", shelf.across), ("twisting", shelf.slide)):
        yield (
            f"The same, {name}: {number_text(along)} × {number_text(part, 4)} = "
            f"{number_text(along * part)} lb·in"
        )
    for strip in shelf.plate.bent.plate.strips[:1]:
        yield f"A strip twists with G·J = {number_text(Fraction(strip.twisting))} lb·in²"
    edges = shelf.plate.edges
    told = ", ".join(
        f"{name} {size_text(each, show)}"
        for name, each in (
            ("front", edges.front),
            ("center", edges.center),
            ("back", edges.back),
        )
    )
    sheared = size_text(shelf.plate.sheared[0], show)
    yield (
        f"Shape of least energy under W = {weighs}, L = {size_text(shelf.span, show)}, with "
        f"{sheared} for shear: {told}"
    )
    yield f"Sag at once, the largest of the board: {size_text(shelf.sag, show)}"


def plate_figures(case):
    """How stiff the board and the strip are taken to be across and in shear, with the source."""
    if case.shelf.strip is None and not case.shelf.cleat:
        return
    for name, made_of in case.materials:
        across, slide, taken_as, cited = ratios_of(made_of)
        yield (
            f"{name}, across its length and in shear, taken as {taken_as}: "
            f"{number_text(across, 2)} and {number_text(slide, 4)} of that ({cited})."
        )
