"""The cases of a project, drawn: lines that take each other by name make one case.

A line whose answer says where its parts stand, and that they are a case by themselves, begins one.
What takes its numbers stands in front of it with its own parts; a line that lays out shelves, and
takes from it or gives to it, says how high these are.
"""

from functools import lru_cache

from sawside.drawing.case.seen import Seen
from sawside.drawing.case.whole_case import views_of
from sawside.errors import quoted
from sawside.project.schema.finding import of_kind

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
    return [_case(evaluation.names, lines, used, begun, identity) for identity in begun]


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


def _case(names, lines, used, begun, identity):
    """One case; what takes from several belongs to the first of them."""
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
    fronts = [key for key in on_it if lines[key].found.place is not None]
    told = _drawn(
        tuple((key, lines[key]) for key in (identity, *fronts)), laid_out and lines[laid_out]
    )
    return {"entry": identity, "name": names[identity], "note": note} | told


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
    """The parts and views of a case made by some lines, (id, what was worked out) of each, and by
    the one that lays out its shelves or None. Nothing of them ever changes."""
    shelving = laid_out and laid_out.found.shelving
    case, *fronts = placed = [worked.found.place(shelving) for _, worked in lines]
    parts, pieces = [], []
    for (identity, worked), made in zip(lines, placed, strict=True):
        for part in worked.found.parts:
            if part.key in made.parts:
                key, letter = f"{identity}/{part.key}", _letter(len(parts))
                parts.append({"key": key, "letter": letter, "entry": identity, "part": part.key})
                pieces += _seen(key, letter, made, part.key)
    views = views_of(lines[0][1].show, pieces, case, [each.outside for each in fronts])
    told = [{"key": key, "title": title, "drawing": drawn} for key, title, drawn in views]
    return {"parts": parts, "views": told}


def _seen(key, letter, made, part):
    how = {"loose": part in made.loose, "behind": part in made.behind, "strip": part in made.strips}
    return [Seen(key, letter, box, **how) for box in made.parts[part]]


def _letter(number):
    """A, B, … Z, AA, AB, …"""
    before, last = divmod(number, len(_LETTERS))
    return (_letter(before - 1) if before else "") + _LETTERS[last]
