"""What is told of the largest case for a space."""

from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.case.shared.space.baseboard import notches
from sawside.reckoners.case.shared.space.found import no_gap_onto_base
from sawside.reckoners.case.shared.space.located import Located
from sawside.reckoners.case.shared.space.walls import SIDES
from sawside.reckoners.case.shared.standing_up import TALLEST
from sawside.reckoners.declaration import Answer

ANSWERS = (
    Answer("width", "Case width", must="go in"),
    Answer("height", "Case height", must="go in"),
    Answer("depth", "Case depth", must="go in"),
    Answer("behind", "Gap behind the case", "lengths", must="agree"),
    Answer("strips", "Scribe strips", "lengths", must="reach"),
    Answer("rip", "Rip the strips to at least", "lengths", must="reach"),
    Answer("notches", "Notches at the baseboard", "lengths", must="reach"),
    Answer("shims", "Shims under the base", "lengths", must="reach"),
    Answer("level", "Level line above the floor", "lengths", must="agree"),
    Answer("diagonal", "Diagonal to tip it up", must="reach"),
    *TALLEST,
    Answer("deepest", "Deepest that tips up", must="stay under"),
    Answer("boxes", "Boxes to stack", "count"),
)
"""Those of the strips say where, at the floor and at the ceiling."""


def answers_of(given, show, found):
    """The answers that this case has, by their keys."""
    answers = {"width": found.width, "height": found.height}
    if found.depth is not None:
        answers["depth"] = found.depth
    if found.back is not None and found.back.lean:
        answers["behind"] = [
            ("At the floor", found.back.at_floor - found.depth.mark),
            ("At the ceiling", found.back.at_floor - found.back.lean - found.depth.mark),
        ]
    if any(strip.rip for strip in found.strips):
        answers["strips"] = list(_strips(show, found))
        answers["rip"] = [
            (strip.side.capitalize(), show.rounded(strip.rip, "reach")) for strip in found.strips
        ]
    cut = notches(given, show, found)
    if cut:
        answers["notches"] = cut
    if found.heights.low_side:
        answers["shims"] = [(f"{found.heights.low_side.capitalize()} end", shim(show, found))]
        answers["level"] = [
            (side.capitalize(), given.line + found.heights.drops[side]) for side in SIDES
        ]
    return answers | _raised(found)


def shim(show, found):
    """What goes under the low end, on fine marks."""
    return on_fine_marks(found.heights.drop, show, "reach")


def _strips(show, found):
    if isinstance(found.walls, Located):
        yield from _placed(show, found)
        return
    for strip in found.strips:
        side = strip.side.capitalize()
        yield f"{side}, at the floor", show.rounded(strip.bottom, "reach")
        yield f"{side}, at the ceiling", show.rounded(strip.top, "reach")


def _placed(show, found):
    """The strips at every reading of walls that bow, the left one first."""
    walls = found.walls
    near, far = ("left", "right") if walls.near_side == "left" else ("right", "left")
    by_side = {near: 1, far: 2}
    for side in SIDES:
        for each in walls.gaps(found.width.mark):
            where = f"{side.capitalize()}, {show.brief(each[0].height)} up"
            yield where, show.rounded(each[by_side[side]], "reach")


def _raised(found):
    box = found.box
    if box is None:
        return {} if found.deepest is None else {"deepest": found.deepest}
    told = {"diagonal": box.diagonal}
    if not box.stands_up:
        told |= box.tallest_answer()
    if box.boxes is not None and not box.stands_up:
        told["boxes"] = box.boxes
    return told


def verdict_of(given, show, found):
    """The sizes to cut, and whether the case can be stood up."""
    deep = f", {show.bare(found.depth)} deep" if found.depth is not None else ""
    sizes = f"{show.bare(found.width)} wide, {show.bare(found.height)} high{deep}"
    return sizes + _standing(given, show, found)


def _standing(given, show, found):
    if not found.stands_up:
        return "; won’t tip up in one piece"
    if no_gap_onto_base(given):
        return "; no room to lift it onto its base"
    if found.deepest is not None and not given.above:
        return f"; tips up if it’s no more than {show.bare(found.deepest, 'stay under')} deep"
    return ""


def fixes_of(given, found):
    """What makes room to tip it up and to lift it onto its base, with the field to change."""
    gap = ("Larger gap above", "above")
    if not found.stands_up:
        return gap, ("Separate toe kick", "kick")
    tight = no_gap_onto_base(given) or (found.deepest is not None and not given.above)
    return (gap,) if tight else ()
