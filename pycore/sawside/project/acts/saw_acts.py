"""The acts at the saw: cut, spoiled, cut down, a set-up tried, and what is told of a part.

Each gives the new document, the act that undoes it, what was done, and the entry's id.
"""

from sawside.errors import Refusal, on_one_line, out_of_range
from sawside.lengths.reading.reader import read_length
from sawside.lengths.reading.unit_kept import pinned
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.kinds.entries import read_entry
from sawside.project.kinds.entry_parts import ABOUT, CUTS, MOST_PIECES, MOST_TRIALS
from sawside.project.pieces.judge import recut as recut_piece
from sawside.project.pieces.judge import verdicts
from sawside.project.pieces.judge_told import part_name
from sawside.project.pieces.size import inches_text, part_named, size_of
from sawside.project.schema.document import unit_of
from sawside.project.schema.finding import found, with_entry


def cut(document, id, part, by, when=""):
    """One piece cut as it is asked for now, or the last one taken back."""
    at, entry, part, show, name = _part(document, id, part)
    pieces = _pieces(entry, "cut", part)
    if not 0 <= len(pieces) + by <= max(part.count, len(pieces)):
        state = "All of these are cut" if by == 1 else "None of these is cut"
        raise Refusal("conflict", f"{state} already.", "There’s nothing to do.", field="by")
    pieces = [*pieces, size_of(part, show) | _when(when)] if by == 1 else pieces[:-1]
    said = f"{'Cut one' if by == 1 else 'Uncut one'} {name}."
    return _changed(document, at, entry, {"cut": {part.key: pieces}}, said)


def spoil(document, id, part, which=None, when=""):
    """A piece that was cut comes back to the list; with none cut, a blank was spoiled."""
    at, entry, part, show, name = _part(document, id, part)
    pieces, spoiled = _pieces(entry, "cut", part), _pieces(entry, "spoiled", part)
    if len(spoiled) >= MOST_PIECES:
        raise Refusal(
            "range", "That’s more scrapped pieces than Sawside counts.", "Start a new line."
        )
    if pieces:
        which = len(pieces) - 1 if which is None else which
        _refuse_not_there(pieces, [which])
        surplus = len(pieces) > part.count
        piece, pieces = pieces[which], pieces[:which] + pieces[which + 1 :]
        said = f"Scrapped one {name}. " + (
            "You’ve already cut extras, so no replacement is needed."
            if surplus
            else "Cut one more."
        )
    else:
        piece = size_of(part, show)
        said = f"Scrapped a blank for {name}. You still have just as many to cut."
    change = {"cut": {part.key: pieces}, "spoiled": {part.key: [*spoiled, piece | _when(when)]}}
    return _changed(document, at, entry, change, said)


def recut(document, id, part, which, when=""):
    """Pieces that were cut down to the size that is asked for now."""
    at, entry, part, show, name = _part(document, id, part)
    pieces = _pieces(entry, "cut", part)
    _refuse_not_there(pieces, which)
    judged = verdicts(document, Evaluation(document), entry, part.key)
    pieces = [
        recut_piece(piece, judged[index], part, show) | _when(when) if index in which else piece
        for index, piece in enumerate(pieces)
    ]
    said = f"Cut {len(which)} {name} to the new size."
    return _changed(document, at, entry, {"cut": {part.key: pieces}}, said)


def about(document, id, part, about):
    """Material, grain, place and rough allowances of a part; "" takes one away."""
    at, entry, part, *_ = _part(document, id, part)
    for key, text in about.items():
        if key not in ABOUT or not isinstance(text, str):
            raise Refusal(
                "unknown", f"A part has no {key!s:.40}.", f"Use {', '.join(ABOUT)}.", field="about"
            )
    now = entry.get("about", {}).get(part.key, {})
    new = {key: text.strip() for key, text in about.items()}
    for key, text in new.items():
        # The line has its own unit; what is typed now is in that of the project.
        if key.startswith("rough_") and text and text != now.get(key):
            _rough(text, unit_of(document), key)
            new[key] = pinned(text, unit_of(document), entry["unit"])
    change = {"about": {part.key: now | new}}
    return _changed(document, at, entry, change, f"Updated {entry['name']}.")


def trial(document, id, part, measured, aimed="", cut="stop", when=""):
    """A set-up tried: what was aimed at, and what the test piece measured."""
    at, entry, part, show, name = _part(document, id, part)
    unit = unit_of(document)
    if cut not in CUTS:
        raise Refusal("unknown", "A set-up is a stop or a mark.", "Send stop or mark.", field="cut")
    aimed = _length(aimed, unit, "aimed") if aimed else show.mark(part.length)
    _length(measured, unit, "measured")
    one = {"aimed": inches_text(aimed), "measured": measured, "unit": unit, "cut": cut}
    trials = [*_pieces(entry, "trials", part), one | _when(when)][-MOST_TRIALS:]
    said = f"Test cut for {name}: {on_one_line(measured).strip()}."
    return _changed(document, at, entry, {"trials": {part.key: trials}}, said)


def _part(document, id, part):
    """(index, entry, its part as it is to be cut now, how its lengths are told, its name)."""
    at, entry = found(document, id)
    worked = Evaluation(document).worked.get(id)
    named = part_named(worked, entry, part)
    return at, entry, named, worked.show, part_name(worked, entry["name"], named.key)


def _pieces(entry, key, part):
    return entry.get(key, {}).get(part.key, [])


def _refuse_not_there(pieces, which):
    """Refuse places that are none in the list of pieces cut."""
    if max(which) >= len(pieces):
        raise Refusal(
            "unknown", "Those pieces aren’t there.", "Send places in the list.", field="which"
        )


def _when(when):
    return {"when": when} if when else {}


def _read(text, unit, field):
    try:
        return read_length(text, unit).value
    except Refusal as refusal:
        raise refusal.of(field) from None


def _length(text, unit, field):
    value = _read(text, unit, field)
    if value <= 0:
        raise Refusal("range", "A piece must be longer than 0.", "Check the number.", field=field)
    return value


def _rough(text, unit, field):
    if not 0 <= _read(text, unit, field) <= 12:
        raise out_of_range(field, "A rough-cut allowance must be from 0 to 12 in.")


def _changed(document, at, entry, change, said):
    """The document with some parts' records replaced; what is empty is left out."""
    new = dict(entry)
    for key, parts in change.items():
        new[key] = entry.get(key, {}) | parts
    undo = {"act": "put", "entries": [entry]}
    return with_entry(document, at, read_entry(new)), undo, said, entry["id"]
