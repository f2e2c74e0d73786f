"""What is said and drawn of a piece of crown: its working, and its picture."""

from sawside.drawing.miters.compound import crown_drawing, face_view
from sawside.geometry.compound import lean_of_degrees, miter_and_tilt
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.miters.shared.compound.crown_cuts import SIDES
from sawside.reckoners.miters.shared.compound.saw import EDGES, OTHER
from sawside.reckoners.miters.shared.corner_field import past_lines


def working_of(given, show, piece):
    """The lines of working: the spring, each corner once, and the lengths where there are any."""
    ends_of = {}
    for end in piece.mitered:
        ends_of.setdefault(end.corner, end)
    yield from past_lines(given, *(f"{end.side}_corner" for end in piece.mitered))
    yield from piece.spring.working
    for end in ends_of.values():
        yield from corner_worked(show, piece.spring, end)
    if piece.edges:
        yield from _lengths_worked(given, show, piece)


def corner_worked(show, spring, end):
    """How the saw is set for a corner, flat and nested."""
    degrees, half = f"{degrees_text(spring.lean.degrees)}°", degrees_text(end.corner / 2)
    sine, cosine = show.pure(spring.lean.sine), show.pure(spring.lean.cosine)
    yield (
        f"Miter: arctan (sin {degrees} ÷ tan {half}°) = arctan ({sine} ÷ tan {half}°)"
        f"{angle_equals(end.sawn.miter)}"
    )
    yield (
        f"Bevel: arcsin (cos {degrees} × cos {half}°) = arcsin ({cosine} × cos {half}°)"
        f"{angle_equals(end.sawn.tilt)}"
    )
    yield f"Nested: 90 − {show.pure(end.corner)} ÷ 2 = {degrees_text(end.held)}"
    more = lean_of_degrees(nearby(spring.lean.degrees) + 1)
    miter, tilt = (angle_text(each) for each in miter_and_tilt(more, end.corner))
    yield f"One more degree of spring would make it miter {miter}, bevel {tilt}"


def _lengths_worked(given, show, piece):
    spring, known = piece.spring, given.measured_on
    reach, steps = show.number(spring.projection), show.number(given.measured)
    yield from projection_worked(given, show, spring)
    for end in piece.mitered:
        added = abs(end.adds)
        way = "+" if (end.kind == "outside") == (known == "bottom") else "−"
        steps += f" {way} {show.number(added)}"
        yield (
            f"{end.side.capitalize()} end, {end.kind} corner: {reach} ÷ tan "
            f"{degrees_text(end.corner / 2)}°{show.equals(added)}"
        )
    other = OTHER[known]
    yield f"{EDGES[other].capitalize()}: {steps}{show.equals(piece.edges[other])}"
    out = "".join(f" + {show.number(end.adds)}" for end in piece.mitered if end.kind == "outside")
    total = show.equals(piece.tip_to_tip)
    yield f"Tip to tip: {show.number(piece.edges['bottom'])}{out}{total}"


def projection_worked(given, show, spring):
    """How far it reaches along the ceiling, where that was found by the spring."""
    if given.found in ("angle", "drop"):
        turn = f"sin {degrees_text(spring.lean.degrees)}°"
        yield f"Projection: {show.number(spring.width)} × {turn}{show.equals(spring.projection)}"


def picture_of_face(given, show, piece):
    """The drawing of the face alone."""
    return face_view(_described(show, piece), _face(given, show, piece))


def pictures_of(given, show, piece):
    """(the whole drawing, that of the face alone), both with one description."""
    face, words = _face(given, show, piece), _described(show, piece)
    spring = piece.spring
    reach = [None, None]
    if spring.width is not None:
        reach = [
            (show.brief(getattr(spring, leg)), _role(given.found in ("legs", leg)))
            for leg in ("drop", "projection")
        ]
    texts = (angle_text(spring.lean.degrees), *reach)
    whole = crown_drawing(words, float(nearby(spring.lean.degrees)), texts, face)
    return whole, face_view(words, face)


def _role(was_given):
    return "given" if was_given else "answer"


def _face(given, show, piece):
    edges, width = piece.edges, piece.spring.width
    texts = [
        (
            f"{EDGES[edge]} {show.brief(edges[edge])}" if edges else EDGES[edge],
            _role(edges and given.measured_on == edge),
        )
        for edge in ("top", "bottom")
    ]
    ends = [
        (float(nearby(end.ratio)), end.sawn.brief) if end else (0, "square") for end in piece.ends
    ]
    return "face", texts, ends, "" if width is None else f"{show.brief(width)} wide"


def _described(show, piece):
    ends = ", ".join(
        f"the {side} end cut for an {end.kind} corner at {end.sawn.brief}"
        if end
        else f"the {side} end square"
        for side, end in zip(SIDES, piece.ends, strict=True)
    )
    edges = piece.edges or {}
    long = "".join(f" The {EDGES[edge]} is {show.brief(edges[edge])}." for edge in edges)
    return (
        f"Crown leans out from the wall by {angle_text(piece.spring.lean.degrees)} and "
        f"meets the ceiling at its top edge. Its face as seen in the room: {ends}.{long}"
    )
