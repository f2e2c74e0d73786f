"""What the questions about a sagging shelf answer: sag, verdict, stress, figures and working."""

from sawside.drawing.shelves.sagging_shelf import sagging_shelf
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.reckoners.declaration import Answer, Reckoning
from sawside.reckoners.shelves.shared.shelf_working import (
    PLATE_SOURCE,
    load_and_own_weight,
    plate_figures,
    shelf_working,
)
from sawside.wood.numbers import metric, number_text, size_text, stress_text
from sawside.wood.strength.loads import density_text
from sawside.wood.strength.sag_limits import LIMITS, seen

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
    "included with G = E/16 (from memory, ASTM D245). Overhangs and the shelf's own weight: beam "
    f"theory. {PLATE_SOURCE} Each figure of the material, the load and the limit names its own "
    "source."
)


def part_text(sag, span):
    """A sag as a part of the span: "1 in 387"."""
    return f"1 in {number_text(span / sag)}"


def verdict_text(case, shelf, show):
    """Whether it stays within the limit, with both figures."""
    most, years = case.limit(shelf), case.given.judged == "years"
    sag = shelf.sag * case.factor
    when = "after years" if years else "at once"
    when += " between the edges" if _between(shelf) else ""
    figures = [fine_text(each, show) for each in (sag, most)]
    if figures[0].removeprefix("≈ ") == figures[1].removeprefix("≈ ") and sag != most:
        figures = [size_text(each, show) for each in (sag, most)]
    told = f"{figures[0]} {when}, and {figures[1]} is the most"
    if case.excess(shelf) > 0:
        return f"Too much: {told}."
    return f"Within the limit: {told}."


def eye_text(case, shelf, show):
    """What the eye makes of the sag after years."""
    good, loose, each = ("0.02″", "1/32″", "in each foot")
    if metric(show):
        good, loose, each = ("1.7 mm", "2.6 mm", "in each meter")
    said = {
        "not": f"Not likely to be seen: at most {good} {each}",
        "perhaps": f"A good eye sees it: between {good} and {loose} {each}",
        "yes": f"To be seen: more than {loose} {each}",
    }[seen(shelf.sag * case.creep, shelf.span)]
    return f"{said}, after years (common practice, no source)."


def stresses_text(case, shelf, show):
    """Bending stress beside the published strength of each part, with what that leaves."""
    return " ".join(
        _one_stress(name, made_of, stress, show)
        for (name, made_of), stress in zip(case.materials, shelf.stresses, strict=False)
    )


def _one_stress(name, made_of, stress, show):
    told = f"{name}: {stress_text(stress, show)}."
    if made_of.strength is None:
        return f"{told} No strength of {made_of.name} is on file."
    strength = made_of.strength
    return (
        f"{told} {made_of.name} broke at {stress_text(strength.least, show)}, "
        f"{number_text(strength.least / stress, 1)} times as much, in short tests of small clear "
        f"pieces ({strength.cited})."
    )


def _stiff(psi, show):
    """A stiffness as tables have it: "1.01 million psi", "6,964 MPa"."""
    if metric(show):
        return stress_text(psi, show)
    return f"{number_text(psi / _MILLION, 2)} million psi"


def figures_text(case, show):
    """Where the figures come from, and what a range would change."""
    told = []
    for name, made_of in (("Stiffness", case.board), ("Strip's stiffness", case.strip_material)):
        if made_of is None:
            continue
        stiffness = made_of.stiffness
        least, most = stiffness.least, stiffness.most
        ranged = f", the least of a range up to {_stiff(most, show)}" if most > least else ""
        told.append(f"{name} of {made_of.name}: {_stiff(least, show)}{ranged} ({stiffness.cited}).")
    told += plate_figures(case)
    told += [
        f"Weight of {made_of.name}: {density_text(made_of.weight.most, show)} "
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


def _one_edge(case, shelf, show):
    """The caution where a strip holds up one edge only, and the other one sags too much."""
    if shelf.cleat or len(shelf.glued) != 1 or case.excess(shelf) <= 0:
        return
    edges = shelf.plate.edges
    held, other = ("front", "back") if shelf.strip.edges == "front" else ("back", "front")
    if getattr(edges, other) > getattr(edges, held):
        also = "a strip or a cleat" if other == "back" else "a strip"
        yield (
            f"A strip along the {held} holds up the {held}: the {other} edge sags "
            f"{fine_text(getattr(edges, other), show)} at once. Put {also} along the {other} too."
        )


ANSWERS = (
    Answer("sag", "Sag at once", must="agree"),
    Answer("sag_after_years", "Sag after years", must="agree"),
    Answer("sag_front", "Front edge, at once", must="agree"),
    Answer("sag_back", "Back edge, at once", must="agree"),
    Answer("sag_between", "Between the edges, at once", must="agree"),
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
    return Reckoning(
        answers=(answers or {})
        | {"sag": on_fine_marks(sag, show), "sag_after_years": on_fine_marks(years, show)}
        | _edges(shelf, show)
        | {
            "verdict": verdict_text(case, shelf, show),
            "part": f"{part_text(sag, shelf.span)} at once, {part_text(years, shelf.span)} after "
            "years",
            "eye": eye_text(case, shelf, show),
            "place": _place(shelf),
            "load": load_and_own_weight(shelf, show),
            "stress": stresses_text(case, shelf, show),
            "figures": figures_text(case, show),
        },
        working=(*working, *shelf_working(case, shelf, show)),
        drawing=sagging_shelf(show, shelf, _captions(case, shelf, show)),
        cautions=(*_one_edge(case, shelf, show), *CAUTIONS, *_unweighed(case)),
    )


def _edges(shelf, show):
    """The sag of both edges, where strips make them differ, and between them if that is worst."""
    if not shelf.plate:
        return {}
    edges = shelf.plate.edges
    places = {"front": edges.front, "back": edges.back}
    places |= {"between": shelf.sag} if _between(shelf) else {}
    return {f"sag_{place}": on_fine_marks(sag, show) for place, sag in places.items()}


def _captions(case, shelf, show):
    """What is under the drawing: the sag, of each edge where they differ, and after years."""
    years = f"{fine_text(shelf.sag * case.creep, show)} after years"
    sag = fine_text(shelf.sag, show)
    if not shelf.plate:
        return (f"sag {sag}, {years}",)
    front, back = (
        fine_text(each, show) for each in (shelf.plate.edges.front, shelf.plate.edges.back)
    )
    between = (f"between the edges {sag}",) if _between(shelf) else ()
    return f"front {front}, back {back} (line)", *between, f"worst {years}"


def _lowest(shelf):
    """(the ends: 0 in the middle of the span, else 1; "front", "back", or None between them)."""
    across = len(shelf.plate.places) if shelf.plate else 1
    drops = shelf.drops
    ends, station = divmod(drops.index(max(drops)), across)
    return ends, {0: "front", across - 1: "back"}.get(station)


def _between(shelf):
    """Whether a shelf that has strips is lowest between its edges."""
    return shelf.plate is not None and _lowest(shelf)[1] is None


def _place(shelf):
    ends, edge = _lowest(shelf)
    along = "at the ends, beyond the supports" if ends else "in the middle of the span"
    if not shelf.plate:
        return f"{along.capitalize()}."
    where = f"At the {edge} edge" if edge else "Between the front and the back"
    return f"{where}, {along}."
