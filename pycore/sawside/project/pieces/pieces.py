"""The pieces that the lines of a project make: sizes, how many are left, what is told of each."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.drawing.lazy import force
from sawside.errors import Refusal
from sawside.lengths.reading.reader import read_length
from sawside.project.pieces.judge import verdicts
from sawside.project.pieces.judge_told import part_name, told_in_groups
from sawside.project.pieces.size import MEASURES
from sawside.project.pieces.stock import stock_told
from sawside.project.pieces.trials import in_brief
from sawside.project.schema.finding import of_kind
from sawside.reckoning.answers import length_told
from sawside.reckoning.links import rational


@dataclass(frozen=True, slots=True)
class Piece:
    """A part of a line: as data, as its line has it, and its entry."""

    told: dict
    part: object
    entry: dict
    worked: object

    @property
    def where(self):
        """The line and the part, for the page."""
        return {"entry": self.entry["id"], "part": self.part.key}

    def size(self, measure, *, rough=False):
        """A measure in exact inches (None for none); `rough` with what is added to it."""
        value = getattr(self.part, measure)
        if value is None:
            return None
        return rational(value) + (allowance(self.entry, self.part, measure) if rough else 0)


def pieces_of(document, evaluation, drawings):
    """Every `Piece`, the longest first."""
    pieces = []
    for entry in of_kind(document, "line"):
        worked = evaluation.worked[entry["id"]]
        if worked.ok:
            for part, told in zip(worked.found.parts, worked.parts, strict=True):
                piece = _told(document, evaluation, entry, worked, part, told)
                if drawings:
                    piece["drawing"] = force(part.drawing)
                pieces.append(Piece(piece, part, entry, worked))
    pieces.sort(key=lambda piece: (-Fraction(piece.told["length"]["mark"]), piece.told["name"]))
    return pieces


def _told(document, evaluation, entry, worked, part, told):
    name = part_name(worked, entry["name"], part.key)
    about = entry.get("about", {}).get(part.key, {})
    many = len(entry.get("cut", {}).get(part.key, ()))
    cut = min(many, part.count)
    judged = verdicts(document, evaluation, entry, part.key) if many else []
    return {
        "entry": entry["id"],
        "part": part.key,
        "name": name,
        "count": part.count,
        "cut": cut,
        "left": part.count - cut,
        "spoiled": len(entry.get("spoiled", {}).get(part.key, ())),
        "length": told["length"],
        "length_along": _along(part),
        "width": told["width"],
        "thickness": told["thickness"],
        "ends": told["ends"],
        "drawing": None,
        "from": worked.reckoner.title,
        "material": about.get("material", ""),
        "stock": stock_told(
            about.get("material", ""),
            getattr(worked.form.given, "material", None),
            told["thickness"],
        ),
        "grain": about.get("grain", ""),
        "place": about.get("place", ""),
        "rough": _rough(entry, worked, part),
        "trial": in_brief(document, entry, part.key),
        "verdicts": told_in_groups(judged, name, worked.show),
    } | ({"about": told["about"]} if "about" in told else {})


def _along(part):
    """Which of two sides the length is of; "" where both are as long, or it is of neither."""
    if part.long_side is None or rational(part.long_side) == rational(part.short_side):
        return ""
    sides = {rational(part.long_side): "long point", rational(part.short_side): "short point"}
    return sides.get(rational(part.length), "")


def _rough(entry, worked, part):
    """The sizes with their allowances, as VALUEs; None where nothing is added.

    What is cut from a blank must come out of it: its mark is never short of what is asked for.
    """
    about = entry.get("about", {}).get(part.key, {})
    if not any(f"rough_{measure}" in about for measure in MEASURES):
        return None
    sizes = {}
    for measure in MEASURES:
        value = getattr(part, measure)
        sizes[measure] = None
        if value is not None:
            label = f"Rough {measure}"
            added = allowance(entry, part, measure)
            whole, must = (rational(value) + added, "reach") if added else (value, None)
            sizes[measure] = length_told(measure, label, whole, worked.show, must)
    return sizes | {"as_typed": {key: about[key] for key in about if key.startswith("rough_")}}


def allowance(entry, part, measure):
    """What is added to a measure before the piece is cut to size, in exact inches.

    A document from elsewhere may hold what can't be read; that adds nothing.
    """
    text = entry.get("about", {}).get(part.key, {}).get(f"rough_{measure}")
    try:
        return read_length(text, entry["unit"]).value if text else Fraction(0)
    except Refusal:
        return Fraction(0)
