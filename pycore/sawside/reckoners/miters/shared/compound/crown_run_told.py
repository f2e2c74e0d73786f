"""What is answered, said and drawn of crown around a case or along walls."""

from fractions import Fraction

from sawside.drawing.lazy import lazy
from sawside.drawing.miters.run_plan import run_plan
from sawside.geometry.miter import along_the_edge
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_text, degrees_text
from sawside.reckoners.declaration import End, Part, Reckoning
from sawside.reckoners.miters.shared.compound.crown_run import crown_run_of
from sawside.reckoners.miters.shared.compound.crown_spring import CROWN
from sawside.reckoners.miters.shared.compound.crown_words import (
    corner_worked,
    picture_of_face,
    projection_worked,
)
from sawside.reckoners.miters.shared.compound.saw import EDGES, OTHER
from sawside.reckoners.miters.shared.moldings.run_cautions import SELF_RETURN, open_loop
from sawside.reckoners.miters.shared.moldings.run_words import order_of, verdict_of
from sawside.wood.saw import cautions_at_the_saw


def run_told(given, show, cautions):
    """The whole `Reckoning` of a run; `cautions` are those of all crown."""
    crown = crown_run_of(given, show)
    walls = [cut for plan, cut in crown.pieces if not plan.leg.is_cap]
    edges = [edge for cut in walls for edge in cut.edges.values()]
    loop = open_loop(given, show, crown.run) if crown.run.closed else ()
    capped = len(walls) < len(crown.pieces)
    plans = [plan for plan, _ in crown.pieces]
    tops = {plan.leg.wall: cut.edges["top"] for plan, cut in crown.pieces if not plan.leg.is_cap}
    longest = max((cut.tip_to_tip for cut in walls), key=nearby)
    answers = _answers(given, show, crown)
    return Reckoning(
        answers=answers,
        working=_worked(given, show, crown),
        drawing=run_plan(show, given, crown.run, plans, ("top edge", tops)),
        cautions=(
            *cautions_at_the_saw(*edges),
            *([SELF_RETURN] if capped else ()),
            *loop,
            *cautions,
        ),
        parts=tuple(_part(given, show, plan, cut) for plan, cut in crown.pieces),
        main="first",
        verdict=_verdict(
            crown, verdict_of(len(plans), show.brief(answers["first"]), show.brief(longest))
        ),
    )


def _verdict(crown, pieces):
    """How the saw is set, where one setting is that of every corner, and the pieces."""
    ends = {end.corner: end.sawn for end in _each_end(crown.pieces)}
    if len(ends) != 1:
        return pieces
    (sawn,) = ends.values()
    return set_and_cut(sawn.miter, sawn.tilt, pieces)


def set_and_cut(miter, bevel, pieces):
    """A verdict that leads with the settings, in degrees, before that of the pieces."""
    settings = f"Miter {angle_text(miter)}, bevel {angle_text(bevel)}"
    return f"{settings}; {pieces[0].lower()}{pieces[1:]}"


def _answers(given, show, crown):
    named = [(f"{at}. {plan.leg.name}", cut) for at, (plan, cut) in enumerate(crown.pieces, 1)]
    tips = [(name, cut.tip_to_tip) for name, cut in named]
    spring = crown.spring
    answers = {"first": tips[0][1], "pieces": tips}
    for edge in ("top", "bottom"):
        answers[f"{edge}s"] = [(name, cut.edges[edge]) for name, cut in named]
    answers |= settings_of(crown.pieces)
    answers["order"] = order_of([plan for plan, _ in crown.pieces], 1, closed=crown.run.closed)
    answers["stock"] = sum((_taken(given, cut) for _, cut in named), Fraction(0))
    answers["spring"] = spring.lean.degrees
    return answers | {key: getattr(spring, key) for key in ("width", "drop", "projection")}


def settings_of(pieces):
    """The answers about the settings of the `pieces` of a `CrownRun`: of the first corner, and of
    the last where that is another one; and how each kind of end is cut."""
    ends = _each_end(pieces)
    if not ends:
        return {}
    first, last = ends[0], ends[-1]
    answers = {"miter": first.sawn.miter, "tilt": first.sawn.tilt, "held": first.held}
    if last.corner != first.corner:
        answers |= {"last_miter": last.sawn.miter, "last_tilt": last.sawn.tilt}
        answers |= {"last_held": last.held}
    several = len({end.corner for end in ends}) > 1
    for side in ("left", "right"):
        of_side = [end for end in ends if end.side == side]
        for key, told in (("flat", "flat_text"), ("up", "held_text")):
            texts = dict.fromkeys(_said(end, getattr(end, told), several, key) for end in of_side)
            if texts:
                answers[f"{side}_{key}"] = " ".join(texts)
    return answers


def _said(end, text, several, key):
    """How an end is cut, with its corner where there are several; one that is cut flat says its
    kind itself."""
    corner = f", {angle_text(end.corner)}" if several else ""
    if key == "up":
        return f"{end.kind.capitalize()} corner{corner}: {text[0].lower()}{text[1:]}"
    return text.replace(" corner", f" corner{corner}", 1)


def _each_end(pieces):
    """Every mitered end, the pieces from left to right."""
    pieces = sorted(pieces, key=lambda each: (each[0].leg.wall, each[0].leg.is_cap))
    return [end for _, cut in pieces for end in cut.mitered]


def _taken(given, cut):
    """What a piece takes of the molding: its tips, and a cut of the kerf along it at each end."""
    reach = cut.spring.projection
    adds = [end.adds if end else Fraction(0) for end in cut.ends]
    return cut.tip_to_tip + sum(along_the_edge(given.kerf, each, reach) for each in adds)


@lazy
def _worked(given, show, crown):
    spring, known = crown.spring, given.measured_on
    lines = [*spring.working, *projection_worked(given, show, spring)]
    reach, ends = show.number(spring.projection), {}
    for end in _each_end(crown.pieces):
        ends.setdefault(end.corner, end)
    for corner, end in ends.items():
        lines += corner_worked(show, spring, end)
        half, added = degrees_text(corner / 2), show.equals(abs(end.adds))
        lines.append(f"Corner of {degrees_text(corner)}°: {reach} ÷ tan {half}°{added}")
    for plan, cut in crown.pieces:
        if not plan.leg.is_cap:
            lines += _edges_worked(show, plan, cut, given.walls[plan.leg.wall - 1].length, known)
    return tuple(lines)


def _edges_worked(show, plan, cut, measured, known):
    """Both edges of a piece from its wall, as far as they differ from that."""
    name, ends = plan.leg.name, list(zip(plan.leg.joints, cut.ends, strict=True))
    returns = [end for joint, end in ends if joint.kind == "returned"]
    others = [end for joint, end in ends if end and joint.kind != "returned"]
    grown = {"top": others, "bottom": returns}
    if known == "top":
        grown = {"top": [], "bottom": returns + others}
    for edge in (OTHER[known], known):
        if grown[edge]:
            way = 1 if edge == "top" else -1
            steps = "".join(show.term(way * end.adds) for end in grown[edge])
            total = show.equals(cut.edges[edge])
            yield f"{name}, {EDGES[edge]}: {show.number(measured)}{steps}{total}"


def _part(given, show, plan, cut):
    long, short = cut.edges["bottom"], cut.edges["top"]
    if long < short:
        long, short = short, long
    left, right = (end.sawn.end if end else End("square", "0°") for end in cut.ends)
    return Part(
        key=plan.leg.key,
        name=plan.leg.name,
        length=cut.tip_to_tip,
        width=cut.spring.width,
        left=left,
        right=right,
        long_side=long,
        short_side=short,
        drawing=picture_of_face(given, show, cut),
        profile=CROWN,
    )
