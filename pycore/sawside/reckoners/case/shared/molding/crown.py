"""Crown on a case: its bottom edge lies on the case, its top edge stands out by the projection."""

from functools import partial
from types import SimpleNamespace

from sawside.drawing.case.molding_on_case import molding_plan
from sawside.drawing.lazy import lazy
from sawside.errors import Refusal
from sawside.geometry.coping_order import in_order
from sawside.geometry.molding_run import layered
from sawside.lengths.real import nearby, sign
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
from sawside.reckoners.declaration import End, Part, Reckoning
from sawside.reckoners.miters.shared.compound.crown_cuts import CrownPiece, ends_at, grows
from sawside.reckoners.miters.shared.compound.crown_run_told import set_and_cut, settings_of
from sawside.reckoners.miters.shared.compound.crown_spring import CROWN, spring_of
from sawside.reckoners.miters.shared.compound.crown_words import (
    corner_worked,
    picture_of_face,
    projection_worked,
)
from sawside.reckoners.miters.shared.moldings.run_fields import SIDES
from sawside.wood.caution import Caution

_HELD = Caution(
    "Nested crown needs crown stops.",
    "Nested crown needs crown stops so it can’t slide. Use the ones the saw maker calls for, and "
    "cut two short test pieces first.",
)


def crown_told(given, show):
    """The whole `Reckoning` of crown on a case."""
    asked = SimpleNamespace(**vars(given), measured_on="bottom")
    spring = spring_of(given, show)
    line = _bottom_edge(given, show, spring)
    run = case_run(given, show, spring.projection)
    plans = in_order(layered(run.legs, [nearby(spring.projection)]), [])
    cut = {plan.leg.key: _piece(asked, spring, plan.leg) for plan in plans}
    pieces = [(plan, cut[plan.leg.key]) for plan in plans]
    settings = settings_of(pieces)
    answers = {"first": run.told(show, plans[0].leg, cut[plans[0].leg.key].tip_to_tip), **settings}
    if len(plans) > 1:
        answers["pieces"] = lengths_of(
            run, show, plans, lambda plan: cut[plan.leg.key].tip_to_tip, tips=True
        )
    if settings:
        for edge in ("bottom", "top"):
            answers[f"{edge}s"] = lengths_of(
                run, show, plans, lambda plan, edge=edge: cut[plan.leg.key].edges[edge]
            )
    if line is not None:
        answers["bottom_line"] = line
    answers |= about_all(given, run, plans) | {"spring": spring.lean.degrees}
    answers |= {key: getattr(spring, key) for key in ("width", "drop", "projection")}
    return Reckoning(
        answers=answers,
        working=_working(asked, show, run, spring, pieces, line),
        drawing=molding_plan(show, given, run.around, plans, _told_of_front(run, show, plans, cut)),
        cautions=(*cautions_of(given, plans), *([_HELD] if settings else ())),
        parts=tuple(_part(asked, show, run, plan, piece) for plan, piece in pieces),
        main="first",
        verdict=_verdict(settings, verdict(show, run, plans)),
        wraps=molding_in_place(given, run, partial(_levels, given, spring.drop)),
    )


def _levels(given, drop, height):
    """(bottom, top) of the crown above the floor, on a case of that height where no other was
    filled in."""
    top = (height if given.case_height is None else given.case_height) + given.rise
    return top - drop, top


def _bottom_edge(given, show, spring):
    """How high the bottom edge is above the floor, in inches; None where that isn't known."""
    if sign(spring.drop - given.rise) <= 0:
        raise Refusal(
            "impossible",
            f"Crown that drops {show.text(spring.drop)} doesn’t reach down to the case from "
            f"{show.text(given.rise)} above it.",
            "Set it lower, or use taller crown.",
            field="rise",
        )
    if given.case_height is None:
        return None
    line = given.case_height + given.rise - spring.drop
    if sign(line) <= 0:
        raise Refusal(
            "impossible",
            f"Crown that drops {show.text(spring.drop)} reaches down to the floor.",
            "Check the outside height, or use smaller crown.",
            field="case_height",
        )
    return line


def _piece(asked, spring, leg):
    """The `CrownPiece` of a leg: a return closes an end with its bottom edge in a point."""
    ends = ends_at(asked, spring, leg.joints)
    top = leg.line + grows([end for end in ends if end])
    return CrownPiece(spring, ends, {"bottom": leg.line, "top": top})


def _told_of_front(run, show, plans, cut):
    (front,) = [plan for plan in plans if plan.leg.key == "front"]
    return front, f"top edge {show.brief(run.told(show, front.leg, cut['front'].edges['top']))}"


def _verdict(settings, pieces):
    return set_and_cut(settings["miter"], settings["tilt"], pieces) if settings else pieces


@lazy
def _working(asked, show, run, spring, pieces, line):
    lines = [*spring.working, *projection_worked(asked, show, spring)]
    mitered = [end for _, cut in pieces for end in cut.mitered]
    if mitered:
        lines += corner_worked(show, spring, mitered[0])
    by_key = {each.key: each for each in run.lines}
    for plan, cut in pieces:
        must = run.must(plan.leg)
        by = show.by(must) if must else show
        bottom, top = cut.edges["bottom"], cut.edges["top"]
        if plan.leg.key in by_key:
            lines += [
                f"{text}{by.equals(bottom)}" for text in line_worked(show, by_key[plan.leg.key])
            ]
        terms = "".join(show.term(end.adds) for end in cut.mitered)
        if terms:
            name = plan.leg.name
            lines.append(f"{name}, top edge: {show.number(bottom)}{terms}{by.equals(top)}")
    if line is not None:
        high, drop = show.number(asked.case_height), show.number(spring.drop)
        rise = f" + {show.number(asked.rise)}" if asked.rise else ""
        lines.append(f"Bottom edge above the floor: {high}{rise} − {drop}{show.equals(line)}")
    return (*lines, stock_worked(asked, show, [plan for plan, _ in pieces]))


def _part(asked, show, run, plan, cut):
    edges = sorted((cut.edges["bottom"], cut.edges["top"]), key=nearby)
    short, long = (run.told(show, plan.leg, each) for each in edges)
    ends = [
        end.sawn.end if end else End("square", _square(joint))
        for end, joint in zip(cut.ends, plan.leg.joints, strict=True)
    ]
    must = run.must(plan.leg)
    return Part(
        key=plan.leg.key,
        name=plan.leg.name,
        length=run.told(show, plan.leg, cut.tip_to_tip),
        width=cut.spring.width,
        left=ends[0],
        right=ends[1],
        long_side=long,
        short_side=short,
        drawing=picture_of_face(asked, show.by(must) if must else show, cut),
        about=tuple(_coped(plan)),
        profile=CROWN,
    )


def _coped(plan):
    for side, joint in zip(SIDES, plan.leg.joints, strict=True):
        if joint.kind == "coped":
            yield f"Cope the {side} end along the line its miter leaves."


def _square(joint):
    return "0°" if joint.scribe is None else f"scribe {joint.scribe}"
