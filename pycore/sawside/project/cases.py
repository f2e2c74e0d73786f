"""The cases of a project, drawn: lines that take each other by name make one case.

A line whose answer says where its parts stand, and that they are a case by themselves, begins one.
What takes its numbers stands in it with its own parts (`standing.py`); a line that lays out
shelves, and takes from it or gives to it, says how high these are.
"""

from functools import lru_cache

from sawside.drawing.case.seen import Seen
from sawside.drawing.case.whole_case import views_of
from sawside.errors import quoted
from sawside.project.schema.finding import of_kind
from sawside.project.standing import left_out_told, opening_named, standing, stands

EVENLY = "Adjustable shelves are drawn evenly spaced."
_LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def cases_told(document, evaluation):
    """Every case as the contract of `view` has it, in the order of its lines."""
    lines = {
        entry["id"]: worked
        for entry in of_kind(document, "line")
        if (worked := evaluation.worked[entry["id"]]).ok
    }
    begun = [key for key, worked in lines.items() if _begins(worked.found)]
    used = {key: _used_by(evaluation.graph.links, key) for key in lines}
    return [_case(evaluation, lines, used, begun, identity) for identity in begun]


def _begins(found):
    return found.place is not None and found.place(None).inside is not None


def _used_by(links, identity):
    """The ids of all that an entry uses, directly or through others."""
    found, asked = set(), [identity]
    while asked:
        new = set(links.uses.get(asked.pop(), ())) - found
        found |= new
        asked += new
    return found


def _case(evaluation, lines, used, begun, identity):
    """One case; what takes from several belongs to the first of them."""
    names = evaluation.names
    on_it = [
        key
        for key in lines
        if key not in begun and identity == next((one for one in begun if one in used[key]), None)
    ]
    shelvings = [
        key
        for key in (*on_it, *(key for key in lines if key in used[identity]))
        if lines[key].found.shelving is not None
    ]
    laid_out, note = _shelving_of(lines, names, identity, shelvings)
    made = tuple(
        (key, lines[key], opening_named(evaluation.graph.known, lines, key))
        for key in (identity, *on_it)
        if stands(lines[key].found)
    )
    told, left_out = _drawn(made, laid_out and lines[laid_out])
    notes = " ".join(filter(None, (*left_out_told(left_out, names), note)))
    return {"entry": identity, "name": names[identity], "note": notes} | told


def _shelving_of(lines, names, identity, shelvings):
    """(the id of the first line that lays out all shelves of a case, or at least the fixed ones, or
    None; what is said of the others)."""
    place = lines[identity].found.place
    made = {key: place(lines[key].found.shelving) for key in shelvings}
    agreeing = [key for key in shelvings if made[key].agrees]
    for key in agreeing:
        if made[key].levelled:
            return key, ""
    if shelvings and not agreeing:
        first = shelvings[0]
        laid_out = len(lines[first].found.shelving.bottoms)
        return None, _at_odds(names[first], laid_out, names[identity], place(None).shelves)
    return None, "" if place(None).levelled else EVENLY


def _at_odds(spacing, laid_out, case, shelves):
    """What is said where shelves are laid out that a case doesn't have: only its own are cut."""
    if laid_out != shelves:
        return (
            f"{quoted(spacing)} lays out {_many(laid_out)} in each bay, {quoted(case)} has "
            f"{shelves or 'none'}. Only those of {quoted(case)} are drawn and cut: enter fixed or "
            "adjustable shelves there."
        )
    return (
        f"{quoted(spacing)} has another inside height or other shelf heights than this case: "
        "they are drawn as the case has them."
    )


def _many(shelves):
    return f"{shelves} {'shelf' if shelves == 1 else 'shelves'}"


@lru_cache(maxsize=8)
def _drawn(lines, laid_out):
    """(the parts and views of a case, what is left out of it): made by some lines as `standing` has
    them, and by the one that lays out its shelves or None. Nothing of them ever changes."""
    made = standing(lines, laid_out and laid_out.found.shelving)
    parts, pieces = [], []
    for identity, worked, place in made.lines:
        for part in worked.found.parts:
            if part.key in place.parts:
                key, letter = f"{identity}/{part.key}", _letter(len(parts))
                parts.append({"key": key, "letter": letter, "entry": identity, "part": part.key})
                pieces += _seen(key, letter, place, part.key)
    (_, worked, case), *_ = made.lines
    views = views_of(worked.show, pieces, case, [each.outside for each in made.frames])
    told = [{"key": key, "title": title, "drawing": drawn} for key, title, drawn in views]
    return {"parts": parts, "views": told}, made.left_out


def _seen(key, letter, made, part):
    how = {
        "loose": part in made.loose,
        "behind": part in made.behind,
        "strip": part in made.strips,
        "covers": part in made.covers,
    }
    return [Seen(key, letter, box, **how) for box in made.parts[part]]


def _letter(number):
    """A, B, … Z, AA, AB, …"""
    before, last = divmod(number, len(_LETTERS))
    return (_letter(before - 1) if before else "") + _LETTERS[last]
