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
from sawside.wood.materials import started
from sawside.wood.numbers import metric, number_text, size_text, stress_text
from sawside.wood.strength.loads import density_text
from sawside.wood.strength.sag_limits import LIMITS, seen
from sawside.wood.tables import noted

_MILLION = 10**6
CAUTIONS = (
    "This isn’t structural design. It assumes clear wood or sound panel and ignores knots, cracks, "
    "joints, fasteners and the wall. If a fall could hurt someone, ask a licensed engineer, and "
    "follow local code and the makers’ instructions.",
    "Damp or changing humidity makes any shelf sag more, especially particleboard and MDF.",
)
SOURCE = (
    "Sag: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), Table 9-1, shear "
    "included with G = E/16 (ASTM D245, unchecked). Overhangs and the shelf’s own weight: beam "
    f"theory. {PLATE_SOURCE} Material, load and limit each name their own source."
)


def part_text(sag, span):
    """A sag as a part of the span: "span/387"."""
    return f"span/{number_text(span / sag)}"


def verdict_text(case, shelf, show):
    """Whether it stays within the limit, with both figures."""
    most, years = case.limit(shelf), case.given.judged == "years"
    sag = shelf.sag * case.factor
    when = "long-term" if years else "now"
    when += " between the edges" if _between(shelf) else ""
    figures = [fine_text(each, show) for each in (sag, most)]
    if figures[0].removeprefix("≈ ") == figures[1].removeprefix("≈ ") and sag != most:
        figures = [size_text(each, show) for each in (sag, most)]
    told = f"{figures[0]} {when}; the limit is {figures[1]}"
    if case.excess(shelf) > 0:
        return f"Too much: {told}."
    return f"Within the limit: {told}."


def eye_text(case, shelf, show):
    """What the eye makes of the sag after years."""
    good, loose, each = ("0.02″", "1/32″", "per foot")
    if metric(show):
        good, loose, each = ("1.7 mm", "2.6 mm", "per meter")
    said = {
        "not": f"Probably not: {good} {each} or less",
        "perhaps": f"A sharp eye will: between {good} and {loose} {each}",
        "yes": f"Yes: more than {loose} {each}",
    }[seen(shelf.sag * case.creep, shelf.span)]
    return f"{said}, long-term (shop practice)."


def stresses_text(case, shelf, show):
    """Bending stress beside the published strength of each part, with what that leaves."""
    return " ".join(
        _one_stress(name, made_of, stress, show)
        for (name, made_of), stress in zip(case.materials, shelf.stresses, strict=False)
    )


def _one_stress(name, made_of, stress, show):
    told = f"{name}: {stress_text(stress, show)}."
    if made_of.strength is None:
        return f"{told} There’s no strength on file for {made_of.spoken}."
    strength = made_of.strength
    return (
        f"{told} {started(made_of.spoken)} fails at about {stress_text(strength.least, show)}, "
        f"{number_text(strength.least / stress, 1)} times this, in short tests of small clear "
        f"samples{noted(strength.cited)}."
    )


def _stiff(psi, show):
    """A stiffness as tables have it: "1.01 million psi", "6,964 MPa"."""
    if metric(show):
        return stress_text(psi, show)
    return f"{number_text(psi / _MILLION, 2)} million psi"


def figures_text(case, show):
    """Where the figures come from, and what a range would change."""
    told = []
    for name, made_of in case.materials:
        stiffness = made_of.stiffness
        least, most = stiffness.least, stiffness.most
        ranged = f", the low end of a range up to {_stiff(most, show)}" if most > least else ""
        told.append(
            f"{name} stiffness, {made_of.spoken}: {_stiff(least, show)}{ranged} "
            f"({stiffness.cited})."
        )
    told += plate_figures(case)
    told += [
        f"Strength of {made_of.spoken}: {stress_text(made_of.strength.least, show)} "
        f"({made_of.strength.cited})."
        for _, made_of in case.materials
        if made_of.strength
    ]
    told += [
        f"Weight of {made_of.spoken}: {density_text(made_of.weight.most, show)} "
        f"({made_of.weight.cited})."
        for _, made_of in case.materials
        if made_of.weight
    ]
    if case.load_cited:
        told.append(f"Load: {case.load_cited}.")
    told.append(f"Creep: {number_text(case.creep, 2)} times ({case.creep_cited}).")
    if case.given.limit != "own":
        told.append(f"Limit: {LIMITS[case.given.limit].cited}.")
    return " ".join(dict.fromkeys(told))


def _unweighed(case):
    """The caution where a weight is not known."""
    unknown = dict.fromkeys(made_of.spoken for _, made_of in case.materials if not made_of.weight)
    if unknown:
        yield (
            f"There’s no weight on file for {' or '.join(unknown)}, so part of the shelf’s own "
            "weight isn’t figured in. Add it to the load if it matters."
        )


def _one_edge(case, shelf, show):
    """The caution where a strip holds up one edge only, and the other one sags too much."""
    if shelf.cleat or len(shelf.glued) != 1 or case.excess(shelf) <= 0:
        return
    edges = shelf.plate.edges
    held, other = ("front", "back") if shelf.strip.edges == "front" else ("back", "front")
    if getattr(edges, other) > getattr(edges, held):
        also = "edging or a cleat" if other == "back" else "edging"
        yield (
            f"Edging along the {held} holds up only the {held}: the {other} edge sags "
            f"{fine_text(getattr(edges, other), show)} now. Put {also} along the {other} too."
        )


ANSWERS = (
    Answer("sag", "Sag now", must="agree"),
    Answer("sag_after_years", "Long-term sag", must="agree"),
    Answer("sag_front", "Front edge, now", must="agree"),
    Answer("sag_back", "Back edge, now", must="agree"),
    Answer("sag_between", "Between the edges, now", must="agree"),
    Answer("verdict", "Compared to the limit", "text"),
    Answer("part", "Sag as a fraction of the span", "text"),
    Answer("eye", "Will you see it?", "text"),
    Answer("place", "Lowest point", "text"),
    Answer("load", "Load", "text"),
    Answer("stress", "Bending stress", "text"),
    Answer("figures", "Where the numbers are from", "text"),
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
            "part": f"{part_text(sag, shelf.span)} now, {part_text(years, shelf.span)} long-term",
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
    years = f"{fine_text(shelf.sag * case.creep, show)} long-term"
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
    along = "at the ends, past the supports" if ends else "at the center of the span"
    if not shelf.plate:
        return f"{along.capitalize()}."
    where = f"At the {edge} edge" if edge else "Between front and back"
    return f"{where}, {along}."
