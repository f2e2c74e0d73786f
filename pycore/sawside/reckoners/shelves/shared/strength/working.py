"""The working of a sagging shelf: its load, its own weight, its section, its sag."""

from fractions import Fraction

from sawside.lengths.units import INCHES_PER
from sawside.wood.materials import PSI_IN
from sawside.wood.numbers import (
    force_text,
    metric,
    number_text,
    size_text,
    small_text,
    stiff_number,
    stiff_unit,
    stress_text,
)
from sawside.wood.strength.loads import density_text, load_text
from sawside.wood.strength.plate_ratios import ratios_of
from sawside.wood.weights import KILOGRAMS_PER_POUND, weight_text

PLATE_SOURCE = (
    "A shelf with edging or a cleat: the board as an orthotropic plate, the edging as beams along "
    "its edges, the shape of least energy (S. Timoshenko and S. Woinowsky-Krieger, Theory of "
    "Plates and Shells, 1959, chapter 11, unchecked); Poisson’s ratio is left out."
)


def load_told(shelf, show):
    """The load in all, and along the shelf where it stands evenly."""
    told = f"{weight_text(shelf.pounds, show)} total"
    along = shelf.spread == "even"
    return f"{told}, {load_text(shelf.pounds / shelf.long, show)}" if along else told


def load_and_own_weight(shelf, show):
    """The same, and what the shelf weighs itself where that is known."""
    told, own = load_told(shelf, show), sum(shelf.own_weights)
    if not own:
        return told
    return f"{told}; the shelf itself weighs {weight_text(own, show)}"


def _weighs(shelf, own, show):
    """What the section carries, as it goes into the formula."""
    load, unit = force_text(shelf.pounds, show), stiff_unit(show)
    if not own:
        return f"{load} {unit}"
    if shelf.spread != "even":
        return f"{load} {unit}, and {force_text(own, show)} {unit} evenly"
    return f"{load} + {force_text(own, show)} {unit}"


def _own_weight(case, shelf, show):
    """The working of what the shelf weighs itself, a line for each part that has a weight."""
    parts = zip(case.materials, shelf.section.parts, shelf.own_weights, strict=False)
    for (name, made_of), part, own in parts:
        if own:
            long, breadth, height = (
                size_text(each, show) for each in (shelf.long, part.breadth, part.height)
            )
            yield (
                f"{name}’s own weight: {long} × {breadth} × {height} at "
                f"{density_text(made_of.weight.most, show)} = {_own_text(own, show)}"
            )


def _own_text(own, show):
    """A weight that was worked out: in kilograms with the digits that the line bears out."""
    return f"{small_text(own * KILOGRAMS_PER_POUND)} kg" if metric(show) else weight_text(own, show)


def shelf_working(case, shelf, show):
    """The working: the section, its bending stiffness, the sag at once and after years."""
    section, own = shelf.section, sum(shelf.own_weights)
    lines = [f"Load: {load_told(shelf, show)}"]
    if shelf.cleat:
        lines.append("The cleat holds the back edge level along its full length")
    lines += _own_weight(case, shelf, show)
    for name, part in zip(("Board", "Edging"), section.parts, strict=False):
        breadth, height, middle = (
            size_text(each, show) for each in (part.breadth, part.height, part.middle)
        )
        lines.append(
            f"{name}: E = {stress_text(part.stiffness, show)}, {breadth} × {height}, its center "
            f"{middle} below the top"
        )
    weighs = _weighs(shelf, own, show)
    lines += _plate_sag(shelf, show, weighs) if shelf.plate else _beam_sag(shelf, show, weighs)
    lines.append(
        f"Long-term: {size_text(shelf.sag, show)} × {number_text(case.creep, 2)} = "
        f"{size_text(shelf.sag * case.creep, show)}"
    )
    return tuple(lines)


def _beam_sag(shelf, show, weighs):
    """The sag of a shelf that bends as one beam."""
    section = shelf.section
    if len(section.parts) > 1:
        yield f"Neutral axis: Σ E·A·y ÷ Σ E·A = {size_text(section.axis, show)} below the top"
    yield (
        f"E·I = Σ E·(b·h³ ÷ 12 + b·h·(y − axis)²) = {stiff_number(section.bending, show, 2)} "
        f"{stiff_unit(show, '·²')}; G·A′ = E ÷ 16 × 5/6 × b·h = "
        f"{stiff_number(section.shear, show)} {stiff_unit(show)}"
    )
    if shelf.supports == "overhanging":
        yield (
            f"Sag now, by the formulas for an overhanging beam, W = {weighs}: "
            f"{size_text(shelf.sag, show)}"
        )
        return
    yield (
        f"Sag now: kb·W·L³ ÷ (E·I) + ks·W·L ÷ (G·A′) with W = {weighs}, "
        f"L = {size_text(shelf.span, show)} = {size_text(shelf.sag, show)}"
    )


def _plate_sag(shelf, show, weighs):
    """The sag of the edges of a shelf that bends as a plate with its strips."""
    along, unit = shelf.stiffness * shelf.thickness**3 / 12, stiff_unit(show, "·")
    modulus, thick = small_text(shelf.stiffness, 10), shelf.thickness
    if metric(show):
        modulus, thick = small_text(shelf.stiffness / PSI_IN["MPa"], 8), thick / INCHES_PER["mm"]
    whole = stiff_number(along, show, 1)
    yield (
        f"Board as a plate, along it: {modulus} × {' × '.join([number_text(thick, 5)] * 3)} ÷ 12 = "
        f"{whole} {unit}"
    )
    for name, part in (("across it", shelf.across), ("twisting", shelf.slide)):
        yield (f"The same, {name}: {whole} × {part} = {stiff_number(along * part, show, 1)} {unit}")
    for strip in shelf.plate.bent.plate.strips[:1]:
        twist = stiff_number(Fraction(strip.twisting), show, 2)
        yield f"The edging twists with G·J = {twist} {stiff_unit(show, '·²')}"
    edges = shelf.plate.edges
    told = ", ".join(
        f"{name} {size_text(each, show)}"
        for name, each in (("front", edges.front), ("center", edges.center), ("back", edges.back))
    )
    sheared = size_text(shelf.plate.sheared[0], show)
    yield (
        f"Shape of least energy under W = {weighs}, L = {size_text(shelf.span, show)}, with "
        f"{sheared} for shear: {told}"
    )
    yield f"Sag now, the most anywhere on the board: {size_text(shelf.sag, show)}"


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
