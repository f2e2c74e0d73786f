"""What is answered about a loaded shelf: sag, verdict, stress, figures and working."""

from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.reckoners.declaration import Answer, Reckoning
from sawside.reckoners.shelves.shared.strength.drawn import shelf_drawn
from sawside.reckoners.shelves.shared.strength.figures import figures_text, stresses_text
from sawside.reckoners.shelves.shared.strength.fixes import fixes_text, longest_span
from sawside.reckoners.shelves.shared.strength.margin import PAST_THEORY, strength_cautions
from sawside.reckoners.shelves.shared.strength.verdict import (
    between,
    eye_text,
    lowest,
    refuse_what_breaks,
    solved_verdict,
    verdict_text,
)
from sawside.reckoners.shelves.shared.strength.working import (
    PLATE_SOURCE,
    load_and_own_weight,
    shelf_working,
)
from sawside.wood.numbers import number_text

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
    Answer("span", "Longest span", must="stay under"),
    Answer("thickness", "Thinnest board", must="reach"),
    Answer("heaviest", "Heaviest load", "text"),
    Answer("strip_height", "Edging height", must="reach"),
    Answer("fix", "To fix it", "text"),
    Answer("sag_front", "Front edge, now", must="agree"),
    Answer("sag_back", "Back edge, now", must="agree"),
    Answer("sag_between", "Between the edges, now", must="agree"),
    Answer("part", "Sag as a fraction of the span", "text"),
    Answer("eye", "Will you see it?", "text"),
    Answer("place", "Lowest point", "text"),
    Answer("load", "Load", "text"),
    Answer("stress", "Bending stress", "text"),
    Answer("figures", "Where the numbers are from", "text"),
)
"""What is answered of every shelf, and what may be worked out."""


def told(case, shelf, show, *, solved=None, working=(), found=""):
    """The whole answer about a shelf.

    `solved` is {key: its value} of the answer that was asked for; `working` is told before the
    other lines and `found` is the value in words.
    """
    if solved:
        refuse_what_breaks(case, shelf)
    sag, years = shelf.sag, shelf.sag * case.creep
    longest = None if solved else longest_span(case, show)
    asked = {} if solved or case.excess(shelf) <= 0 else {"fix": fixes_text(case, show, longest)}
    return Reckoning(
        main=next(iter(solved or {"sag"})),
        verdict=_verdict(case, shelf, show, found),
        answers={"sag": on_fine_marks(sag, show), "sag_after_years": on_fine_marks(years, show)}
        | (solved or asked)
        | _edges(shelf, show)
        | {
            "part": f"{part_text(sag, shelf.span)} now, {part_text(years, shelf.span)} long-term",
            "eye": eye_text(case, shelf, show),
            "place": _place(shelf),
            "load": load_and_own_weight(shelf, show),
            "stress": stresses_text(case, shelf, show),
            "figures": figures_text(case, show),
        },
        working=(*working, *shelf_working(case, shelf, show)),
        drawing=shelf_drawn(case, shelf, show, longest),
        cautions=(
            *strength_cautions(case, shelf),
            *_one_edge(case, shelf, show),
            *CAUTIONS,
            *_unweighed(case),
        ),
        fixes=_fixes(shelf) if asked else (),
    )


def _fixes(shelf):
    """The fields that may be changed for a shelf that sags too much, where it sags most.

    Ends that hang past their supports drop further when the span between those gets shorter.
    """
    ends, edge = lowest(shelf)
    edging = ("Taller edging", "strip_height")
    if not shelf.strip:
        edging = ("Add edging", "strip")
    elif edge and shelf.strip.edges not in (edge, "both"):
        edging = ("Edging on both edges", "strip")
    shorter = ("Shorter overhang", "overhang") if ends else ("Shorter span", "span")
    return ("Thicker board", "thickness"), edging, shorter


def _verdict(case, shelf, show, found):
    return solved_verdict(case, shelf, show, found) if found else verdict_text(case, shelf, show)


def part_text(sag, span):
    """A sag as a part of the span: "span/387"; past what the formulas hold for "over span/20"."""
    if sag > span * PAST_THEORY:
        return f"over span/{number_text(1 / PAST_THEORY)}"
    return f"span/{number_text(span / sag)}"


def _edges(shelf, show):
    """The sag of both edges, where strips make them differ, and between them if that is worst."""
    if not shelf.plate:
        return {}
    edges = shelf.plate.edges
    places = {"front": edges.front, "back": edges.back}
    places |= {"between": shelf.sag} if between(shelf) else {}
    return {f"sag_{place}": on_fine_marks(sag, show) for place, sag in places.items()}


def _place(shelf):
    ends, edge = lowest(shelf)
    along = "at the ends, past the supports" if ends else "at the center of the span"
    if not shelf.plate:
        return f"{along.capitalize()}."
    where = f"At the {edge} edge" if edge else "Between front and back"
    return f"{where}, {along}."
