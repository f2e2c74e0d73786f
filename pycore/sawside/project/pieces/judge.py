"""Judging the pieces that are cut by what is asked for now.

A piece may be off by the tolerance and still be good, be it off the exact size or off the mark
that it is cut to. Beyond it a piece that the one asked for can be cut out of can be cut down;
nothing makes one larger. `judge_told` says it in words.
"""

from contextlib import suppress
from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.reading.reader import read_length
from sawside.project.pieces.ends_cut import ends_now, ends_of, needed_for, same_ends
from sawside.project.pieces.size import MEASURES, inches, short_side_of, size_of
from sawside.reckoning.links import rational
from sawside.settings.settings import read_settings

_BEST_FIRST = ("good", "cut down", "recut ends", "unknown", "too short")


@dataclass(frozen=True, slots=True)
class Change:
    """A measure of a piece, in exact inches: as it was cut, as it is asked for, and how much is
    missing (below 0: is too much), to which other ends may add."""

    measure: str
    was: Fraction
    now: Fraction
    missing: Fraction


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a piece is now, and what has to be changed of it.

    `name` is "good", "cut down", "too short", "recut ends", "unknown" (nobody kept what it would
    take to know) or "gone" (it is one more than is asked for). `changes` are the measures that
    are wrong, the worst first; `ends` that it is for other ends. `length` is there for each that
    could be judged.
    """

    name: str
    length: Change | None = None
    changes: tuple[Change, ...] = ()
    ends: bool = False

    @property
    def measures(self):
        """What has to be changed: measures, and "ends"."""
        return (*(each.measure for each in self.changes), *(("ends",) if self.ends else ()))


_UNKNOWN, _GONE = Verdict("unknown"), Verdict("gone")


def tolerance_of(document):
    """How far a piece may be off either way, in exact inches; usually half a mark."""
    kept = document.get("tolerance")
    if kept is not None:
        with suppress(Refusal):  # a document from elsewhere may hold what can't be read
            return abs(read_length(kept["text"], kept["unit"]).value)
    return read_settings(document["settings"]).grid.step / 2


def verdicts(document, evaluation, entry, part_key):
    """The `Verdict` on each piece cut of a part, in its order.

    As many as are asked for are judged by the best of them: what is beyond is "gone".
    """
    pieces = entry.get("cut", {}).get(part_key, [])
    worked = evaluation.worked.get(entry["id"])
    if worked is None or not worked.ok:
        return [_UNKNOWN] * len(pieces)
    part = next((each for each in worked.found.parts if each.key == part_key), None)
    if part is None:
        return [_GONE] * len(pieces)
    asked = _Asked(part, worked.show, tolerance_of(document))
    found = [asked.verdict(piece) for piece in pieces]
    best = sorted(range(len(found)), key=lambda at: _BEST_FIRST.index(found[at].name))
    for at in best[part.count :]:
        found[at] = _GONE
    return found


class _Asked:
    """A part as it is asked for now."""

    def __init__(self, part, show, tolerance):
        self._size, self._tolerance = size_of(part, show), tolerance
        self._marks = {each: inches(self._size[each]) for each in MEASURES if each in self._size}
        self._exact = {each: rational(getattr(part, each)) for each in self._marks}
        self._ends = ends_now(part, self._size)

    def verdict(self, piece):
        """The verdict on one piece."""
        if "length" not in piece:
            return _UNKNOWN
        kept = {each: inches(piece[each]) for each in self._marks if each in piece}
        was = ends_of(piece, self._ends)
        ends = not same_ends(was, self._ends, self._tolerance)
        needed = needed_for(was, self._ends, self._tolerance) if ends else Fraction(0)
        length = self._change("length", kept["length"])
        small = self._wrong(kept, 1, needed or Fraction(0))
        if small:
            for_ends = bool(needed) and any(each.measure == "length" for each in small)
            return Verdict("too short", length, small, for_ends)
        if needed is None:
            return Verdict("unknown", ends=True)
        large = self._wrong(kept, -1)
        if ends:
            return Verdict("recut ends", length, large, ends=True)
        return Verdict("cut down" if large else "good", length, large)

    def _wrong(self, kept, way, needed=Fraction(0)):
        """What is missing beyond the tolerance (`way` 1), or too much (-1); the worst first."""
        wrong = []
        for measure, was in kept.items():
            change = self._change(measure, was, needed if measure == "length" else 0)
            from_exact = change.missing + self._exact[measure] - change.now
            if min(change.missing * way, from_exact * way) > self._tolerance:
                wrong.append(change)
        return tuple(sorted(wrong, key=lambda each: -abs(each.missing)))

    def _change(self, measure, was, needed=0):
        now = self._marks[measure]
        return Change(measure, was, now, now - was + needed)


def recut(piece, verdict, part, show):
    """A piece after what its verdict told was done; what is within the tolerance stays as it is."""
    new = size_of(part, show)
    if verdict.name not in ("good", "cut down", "recut ends"):
        return new
    told = verdict.measures
    stays = [each for each in MEASURES if each in new and each in piece and each not in told]
    if not {"length", "ends"} & {*told} and "ends" in piece:
        stays.append("ends")
    new |= {each: piece[each] for each in stays}
    return new | short_side_of(part, inches(new["length"]))
