"""The working of a sagging shelf: its load, its own weight, its section, its sag."""

from sawside.wood.loads import load_text, weight_text
from sawside.wood.numbers import number_text, size_text


def load_told(shelf):
    """The load in all, and along the shelf where it stands evenly."""
    told = f"{weight_text(shelf.pounds)} in all"
    along = shelf.spread == "even" and not shelf.cleat
    return f"{told}, {load_text(shelf.pounds / shelf.long)}" if along else told


def load_and_own_weight(shelf):
    """The same, and what the shelf weighs itself where that is known."""
    told, own = load_told(shelf), sum(shelf.own_weights)
    if not own:
        return told
    what = "its front half weighs" if shelf.cleat else "its own weight is"
    return f"{told}; {what} {weight_text(own)}"


def _weighs(shelf, own):
    """What the section carries, as it goes into the formula."""
    load = number_text(shelf.carried, 1)
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
        lines.append(
            "The cleat carries half of it; the front half of the board carries the rest "
            "(common practice, no source)"
        )
    lines += _own_weight(case, shelf, show)
    for name, part in zip(("Board", "Strip"), section.parts, strict=False):
        breadth, height, middle = (
            size_text(each, show) for each in (part.breadth, part.height, part.middle)
        )
        lines.append(
            f"{name}: E = {number_text(part.stiffness)} psi, {breadth} × {height}, its middle "
            f"{middle} below the top"
        )
    if len(section.parts) > 1:
        lines.append(
            f"Neutral axis: Σ E·A·y ÷ Σ E·A = {size_text(section.axis, show)} below the top"
        )
    lines.append(
        f"E·I = Σ E·(b·h³ ÷ 12 + b·h·(y − axis)²) = {number_text(section.bending)} lb·in²; "
        f"G·A′ = E ÷ 16 × 5/6 × b·h = {number_text(section.shear)} lb"
    )
    weighs = _weighs(shelf, own)
    if shelf.supports == "overhanging":
        lines.append(
            f"Sag at once, by the formulas for a beam that stands over, W = {weighs}: "
            f"{size_text(shelf.sag, show)}"
        )
    else:
        lines.append(
            f"Sag at once: kb·W·L³ ÷ (E·I) + ks·W·L ÷ (G·A′) with W = {weighs}, "
            f"L = {size_text(shelf.span, show)} = {size_text(shelf.sag, show)}"
        )
    lines.append(
        f"After years: {size_text(shelf.sag, show)} × {number_text(case.creep, 2)} = "
        f"{size_text(shelf.sag * case.creep, show)}"
    )
    return tuple(lines)
