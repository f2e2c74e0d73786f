"""A flat molding on a case: mitered standing on edge, its back against the case."""

from dataclasses import replace
from types import SimpleNamespace

from sawside.drawing.case.molding_on_case import molding_plan
from sawside.drawing.lazy import lazy
from sawside.geometry.coping_order import in_order
from sawside.geometry.molding_run import RIGHT_ANGLE, layered
from sawside.lengths.real import sign
from sawside.reckoners.case.shared.molding.placed import molding_in_place
from sawside.reckoners.case.shared.molding.run import case_run
from sawside.reckoners.case.shared.molding.told import (
    about_all,
    cautions_of,
    lengths_of,
    line_worked,
    stock_worked,
    verdict,
)
from sawside.reckoners.declaration import Reckoning
from sawside.reckoners.miters.shared.moldings.run_parts import part_of
from sawside.reckoners.miters.shared.moldings.run_words import AT_THE_SAW


def flat_told(given, show):
    """The whole `Reckoning` of a base, a band or a strip."""
    run = case_run(given, show, given.thickness)
    pieces = in_order(layered(run.legs, [given.thickness]), [])
    line = _top_edge(given)
    answers = {"first": run.told(show, pieces[0].leg, pieces[0].tip_to_tip)}
    if len(pieces) > 1:
        answers["pieces"] = lengths_of(run, show, pieces, lambda piece: piece.tip_to_tip, tips=True)
    if any(sign(adds) for piece in pieces for adds in piece.adds):
        answers |= {
            "insides": lengths_of(run, show, pieces, lambda piece: piece.back),
            "setting": RIGHT_ANGLE / 2,
            "at_the_saw": AT_THE_SAW,
        }
    if line is not None:
        answers["top_line"] = line
    return Reckoning(
        answers=answers | about_all(given, run, pieces),
        working=_working(given, show, run, pieces, line),
        drawing=molding_plan(show, given, run.around, pieces, _told_of_front(show, run, pieces)),
        cautions=cautions_of(given, pieces),
        parts=tuple(_part(given, show, run, piece) for piece in pieces),
        verdict=verdict(show, run, pieces),
        wraps=_in_place(given, run, line),
    )


def _in_place(given, run, line):
    """Where it goes on a case; None where it isn't told how high it is there."""
    if line is None:
        return None
    return molding_in_place(given, run, lambda _: (given.bottom_at, line))


def _top_edge(given):
    """How high the top edge is above the floor, in inches; None where that isn't known."""
    if given.molding != "base" or given.molding_height is None:
        return None
    return given.bottom_at + given.molding_height


def _told_of_front(show, run, pieces):
    (front,) = [piece for piece in pieces if piece.leg.key == "front"]
    length = run.told(show, front.leg, front.face)
    return front, f"{'face' if sign(front.face - front.back) else 'front'} {show.brief(length)}"


@lazy
def _working(given, show, run, pieces, line):
    lines = []
    by_key = {each.key: each for each in run.lines}
    for piece in pieces:
        must = run.must(piece.leg)
        by = show.by(must) if must else show
        if piece.leg.key in by_key:
            lines += [
                f"{text}{by.equals(piece.back)}"
                for text in line_worked(show, by_key[piece.leg.key])
            ]
        terms = "".join(show.term(adds) for adds in piece.adds)
        if terms:
            back = show.number(piece.back)
            lines.append(f"{piece.leg.name}, face: {back}{terms}{by.equals(piece.face)}")
        if piece.is_between:
            out = show.number(max(piece.adds))
            total = by.equals(piece.tip_to_tip)
            lines.append(f"{piece.leg.name}, tip to tip: {show.number(piece.back)} + {out}{total}")
    if line is not None and given.bottom_at:
        low, high = show.number(given.bottom_at), show.number(given.molding_height)
        lines.append(f"Top edge above the floor: {low} + {high}{show.equals(line)}")
    return (*lines, stock_worked(given, show, pieces))


def _part(given, show, run, piece):
    must = run.must(piece.leg)
    layers = [SimpleNamespace(height=given.molding_height)]
    part = part_of(show.by(must) if must else show, piece.leg.name, piece, layers)
    sizes = {
        key: run.told(show, piece.leg, getattr(part, key))
        for key in ("length", "long_side", "short_side")
    }
    return replace(part, key=piece.leg.key, **sizes)
