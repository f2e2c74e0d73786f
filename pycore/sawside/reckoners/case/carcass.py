"""What parts a case is cut from: each with its size, grain, edging and joints."""

from dataclasses import replace
from functools import partial

from sawside.drawing.case.carcass import carcass_drawing
from sawside.drawing.case.panel import panel_drawing
from sawside.geometry.end import End
from sawside.reckoners.case.shared.carcass.about import about_panel
from sawside.reckoners.case.shared.carcass.amounts import amounts_answers, amounts_of
from sawside.reckoners.case.shared.carcass.as_measured import as_measured
from sawside.reckoners.case.shared.carcass.cautions import cautions
from sawside.reckoners.case.shared.carcass.fields import FIELDS
from sawside.reckoners.case.shared.carcass.limits import refuse_impossible
from sawside.reckoners.case.shared.carcass.panels import panels_of
from sawside.reckoners.case.shared.carcass.placed import placed_case
from sawside.reckoners.case.shared.carcass.shelf_levels import shelf_levels
from sawside.reckoners.case.shared.carcass.sizes import sizes_of
from sawside.reckoners.case.shared.carcass.strips import strips_of
from sawside.reckoners.case.shared.carcass.working import working
from sawside.reckoners.declaration import Answer, Fit, Part, Reckoner, Reckoning
from sawside.reckoners.shared.numbered import numbered

_SQUARE = End("square", "0°")


def compute(given, show):
    """Every panel of the case, and what they come to."""
    sizes = sizes_of(given, show)
    refuse_impossible(sizes, show)
    panels = panels_of(sizes)
    strips = tuple(strips_of(panels, sizes))
    amounts = amounts_of(panels, strips, given)
    return Reckoning(
        answers=_answers(sizes, panels, show) | amounts_answers(amounts, show),
        working=tuple(working(sizes, panels, amounts, given, show)),
        drawing=carcass_drawing(show, sizes, shelf_levels(sizes)),
        cautions=tuple(cautions(sizes, given.material, show)),
        parts=(
            *(_part(panel, sizes, show) for panel in panels),
            *(replace(_part(strip, sizes, show), is_edging=True) for strip in strips),
        ),
        verdict=_verdict(panels, show),
        place=partial(placed_case, sizes, panels, strips),
    )


def _answers(sizes, panels, show):
    by_key = {panel.key: panel for panel in panels}
    answers = {f"{key}_length": by_key[key].length for key in ("side", "top", "bottom")}
    for key in ("fixed", "adjustable"):
        alike = [panel for panel in panels if panel.key.startswith(key)]
        if alike:
            answers[key] = [(panel.name, show.rounded(panel.length, panel.must)) for panel in alike]
    if "divider" in by_key:
        divider = by_key["divider"]
        answers["divider_length"] = show.rounded(divider.length, divider.must)
    if "back" in by_key:
        back = by_key["back"]
        answers["back_height"] = show.rounded(back.length, back.must)
        answers["back_width"] = show.rounded(back.width, back.must)
    for each in ("width", "height", "depth"):
        answers[f"outside_{each}"] = getattr(sizes, each)
        answers[f"inside_{each}"] = getattr(sizes, f"inside_{each}")
    answers["kick_height"], answers["recess"] = sizes.kick_height, sizes.recess
    if sizes.proud and sizes.case_band:
        answers["over_edging"] = sizes.depth + sizes.case_band
    if sizes.fixed:
        answers["openings"] = _openings(sizes.heights.openings)
    several = len(set(sizes.bays)) > 1
    if sizes.shared.even is not None or not several:
        answers["bay"] = min(sizes.bays)
    if several:
        answers["bays"] = numbered("Bay", sizes.bays)
    return answers


def _openings(openings):
    """From the bottom up; of equal ones one."""
    if len(set(openings)) == 1:
        return [("Every opening", openings[0])]
    (name, lowest), *others = numbered("Opening", openings)
    return [(f"{name}, at the bottom", lowest), *others]


def _verdict(panels, show):
    side, top, bottom = (show.bare(panel.length) for panel in panels[:3])
    levels = f"top and bottom {top}" if top == bottom else f"top {top}, bottom {bottom}"
    return f"Sides {side}, {levels}"


def _part(panel, sizes, show):
    return Part(
        key=panel.key,
        name=panel.name,
        length=show.rounded(panel.length, panel.must),
        width=show.rounded(panel.width, panel.must),
        thickness=as_measured(panel.thickness, show),
        count=panel.count,
        left=_SQUARE,
        right=_SQUARE,
        drawing=panel_drawing(show, panel),
        about=about_panel(panel, sizes, show),
    )


def _room(given):
    """(field, room at both ends together) of an adjustable shelf; None without any."""
    return ("gap", 2 * given.gap) if given.adjustable else None


RECKONER = Reckoner(
    key="carcass",
    title="Carcass",
    asks="What parts do I cut for this case?",
    words=(
        "carcass, case parts, cut list, cabinet parts, parts for a cabinet, build a cabinet, "
        "build a bookcase, cabinet box, bookcase parts, partition, bays, toe kick, inside size, "
        "outside size, sheets for a cabinet, how much plywood, weight of a case"
    ),
    order=620,
    job="cases",
    picture={
        "wood": "M4 5h4v26H4zM32 5h4v26h-4zM12 5h16v4H12zM12 27h16v4H12zM12 15h16v4H12z",
        "chalk": "M4 35.5h32m-3-3l3 3-3 3M7 32.5l-3 3 3 3",
    },
    basic=("width", "height", "depth", "thickness", "fixed"),
    makes_parts=True,
    fields=FIELDS,
    answers=(
        Answer("side_length", "Side length", must="agree"),
        Answer("top_length", "Top length", must="agree"),
        Answer("bottom_length", "Bottom length", must="agree"),
        Answer("divider_length", "Divider length", must="go in"),
        Answer("fixed", "Fixed shelf length", "lengths", must="go in"),
        Answer("adjustable", "Adjustable shelf length", "lengths", must="go in"),
        Answer("back_height", "Back height", must="case"),
        Answer("back_width", "Back width", must="case"),
        Answer("outside_width", "Outside width", must="agree"),
        Answer("outside_height", "Outside height", must="agree"),
        Answer("outside_depth", "Outside depth", must="agree"),
        Answer("over_edging", "Depth over the edging", must="agree"),
        Answer("inside_width", "Inside width", must="agree"),
        Answer("inside_height", "Inside height", must="agree"),
        Answer("inside_depth", "Inside depth", must="agree"),
        Answer("kick_height", "Toe kick height", must="agree"),
        Answer("recess", "Toe kick recess", must="agree"),
        Answer("bay", "Bay width", must="agree"),
        Answer("bays", "Bay widths", "lengths", must="agree"),
        Answer("openings", "Openings between fixed shelves", "lengths", must="agree"),
        Answer("sheets", "Sheet area, before waste", "text"),
        Answer("edging", "Edging length", must="reach"),
        Answer("finish", "Area to finish", "text"),
        Answer("weight", "Weight", "weight"),
    ),
    source=(
        "Arithmetic. The default joints are shop practice. A crosspiece in the center of a base "
        "over 36 in: common practice, no source. Weight: the source of the material’s figure, in "
        "Wood and panel data; solid edging is taken for the same material."
    ),
    compute=compute,
    verdict="Sides {side_length}, top {top_length}, bottom {bottom_length}",
    example={
        "width": "36",
        "height": "32",
        "depth": "15 1/2",
        "thickness": "23/32",
        "fixed": "1",
        "kick": "notched",
        "dividers": "1",
        "adjustable": "1",
    },
    fits=(Fit("adjustable", _room, "less"),),
)
