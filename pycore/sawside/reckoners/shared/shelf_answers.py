"""What the questions about a sagging shelf answer: sag, verdict, stress, figures and working."""

from sawside.drawing.sagging_shelf import sagging_shelf
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.reckoners.declaration import Answer, Reckoning
from sawside.reckoners.shared.shelf_working import load_and_own_weight, shelf_working
from sawside.wood.numbers import number_text, size_text
from sawside.wood.sag_limits import LIMITS, seen

_MILLION = 10**6
CAUTIONS = (
    "This is not a structural design. It reckons small clear wood or panel; knots, cracks, joints, "
    "fasteners and the wall are not in it. Where a fall could hurt somebody, ask a licensed "
    "engineer and follow local codes and the makers' instructions.",
    "Damp, or humidity that goes up and down, makes every shelf sag more, particleboard and MDF "
    "most of all.",
)
SOURCE = (
    "Sag: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), Table 9-1, shear "
    "included with G = E/16 (from memory, ASTM D245). Overhangs, a glued strip and the shelf's own "
    "weight: beam theory. Each figure of the material, the load and the limit names its own source."
)


def part_text(sag, span):
    """A sag as a part of the span: "1 in 387"."""
    return f"1 in {number_text(span / sag)}"


def verdict_text(case, shelf, show):
    """Whether it stays within the limit, with both figures."""
    most, years = case.limit(shelf), case.given.judged == "years"
    sag = shelf.sag * case.factor
    when = "after years" if years else "at once"
    figures = [fine_text(each, show) for each in (sag, most)]
    if figures[0].removeprefix("≈ ") == figures[1].removeprefix("≈ ") and sag != most:
        figures = [size_text(each, show) for each in (sag, most)]
    told = f"{figures[0]} {when}, and {figures[1]} is the most"
    if case.excess(shelf) > 0:
        return f"Too much: {told}."
    return f"Within the limit: {told}."


def eye_text(case, shelf):
    """What the eye makes of the sag after years."""
    said = {
        "not": "Not likely to be seen: at most 0.02″ in each foot",
        "perhaps": "A good eye sees it: between 0.02″ and 1/32″ in each foot",
        "yes": "To be seen: more than 1/32″ in each foot",
    }[seen(shelf.sag * case.creep, shelf.span)]
    return f"{said}, after years (common practice, no source)."


def stress_text(case, shelf):
    """Bending stress beside the published strength of each part, with what that leaves."""
    return " ".join(
        _one_stress(name, made_of, stress)
        for (name, made_of), stress in zip(case.materials, shelf.stresses, strict=False)
    )


def _one_stress(name, made_of, stress):
    told = f"{name}: {number_text(stress)} psi."
    if made_of.strength is None:
        return f"{told} No strength of {made_of.name} is on file."
    strength = made_of.strength
    return (
        f"{told} {made_of.name} broke at {number_text(strength.least)} psi, "
        f"{number_text(strength.least / stress, 1)} times as much, in short tests of small clear "
        f"pieces ({strength.cited})."
    )


def figures_text(case):
    """Where the figures come from, and what a range would change."""
    told = []
    for name, made_of in (("Stiffness", case.board), ("Strip's stiffness", case.strip_material)):
        if made_of is None:
            continue
        stiffness = made_of.stiffness
        least, most = stiffness.least / _MILLION, stiffness.most / _MILLION
        ranged = f", the least of a range up to {number_text(most, 2)}" if most > least else ""
        told.append(
            f"{name} of {made_of.name}: {number_text(least, 2)} million psi{ranged} "
            f"({stiffness.cited})."
        )
    told += [
        f"Weight of {made_of.name}: {number_text(made_of.weight.most, 1)} lb for each cubic foot "
        f"({made_of.weight.cited})."
        for _, made_of in case.materials
        if made_of.weight
    ]
    if case.load_cited:
        told.append(f"Load: {case.load_cited}.")
    told.append(f"Creep: {number_text(case.creep, 2)} times ({case.creep_cited}).")
    if case.given.limit != "own":
        told.append(f"Limit: {LIMITS[case.given.limit].cited}.")
    return " ".join(told)


def _unweighed(case):
    """The caution where a weight is not known."""
    unknown = dict.fromkeys(made_of.name for _, made_of in case.materials if not made_of.weight)
    if unknown:
        yield (
            f"No weight of {' or '.join(unknown)} is known: the shelf's own weight is not wholly "
            "in the load. Add it where it matters."
        )


ANSWERS = (
    Answer("sag", "Sag at once", must="agree"),
    Answer("sag_after_years", "Sag after years", must="agree"),
    Answer("verdict", "Against the limit", "text"),
    Answer("part", "As a part of the span", "text"),
    Answer("eye", "What the eye sees", "text"),
    Answer("place", "Where it hangs lowest", "text"),
    Answer("load", "Load", "text"),
    Answer("stress", "Bending stress", "text"),
    Answer("figures", "Where the figures come from", "text"),
)
"""What is told of every shelf, also of one that was worked out."""


def told(case, shelf, show, *, answers=None, working=()):
    """The whole answer about a shelf; `answers` and `working` are told before it."""
    sag, years = shelf.sag, shelf.sag * case.creep
    caption = f"{fine_text(sag, show)}, {fine_text(years, show)} after years"
    return Reckoning(
        answers=(answers or {})
        | {
            "sag": on_fine_marks(sag, show),
            "sag_after_years": on_fine_marks(years, show),
            "verdict": verdict_text(case, shelf, show),
            "part": f"{part_text(sag, shelf.span)} at once, {part_text(years, shelf.span)} after "
            "years",
            "eye": eye_text(case, shelf),
            "place": _place(shelf),
            "load": load_and_own_weight(shelf),
            "stress": stress_text(case, shelf),
            "figures": figures_text(case),
        },
        working=(*working, *shelf_working(case, shelf, show)),
        drawing=sagging_shelf(show, shelf, sag, caption),
        cautions=(*CAUTIONS, *_unweighed(case)),
    )


def _place(shelf):
    if shelf.drops[0] == shelf.sag:
        return "In the middle of the span."
    return "At the ends, beyond the supports."
