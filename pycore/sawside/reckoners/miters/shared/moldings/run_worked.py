"""The working of a run of molding."""

from sawside.drawing.lazy import lazy
from sawside.geometry.angles import tangent
from sawside.geometry.miter import half_corner
from sawside.geometry.molding_run import RIGHT_ANGLE
from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.reckoners.miters.shared.moldings.run_words import name_of

_SIDES = ("left", "right")


@lazy
def working_of(given, show, run, pieces, told):
    """Each corner, what it adds in each layer, and each piece; `pieces` as they lie, `told(piece)`
    the `Show` that rounds one."""
    several = len(given.layers) > 1
    lines = list(_corners_worked(given, show, run.corners))
    lines += _turns_worked(show, run)
    lines += _returns_worked(given, show)
    lines += _joints_worked(show, pieces, several)
    for piece in pieces:
        lines += _piece_worked(show, piece, told(piece), name_of(piece, several))
    if several:
        lines.append("The back of each layer is the face of the one under it, unrounded")
    return tuple(lines)


def _corners_worked(given, show, corners):
    for number, (wall, corner) in enumerate(zip(given.walls, corners, strict=False), 1):
        degrees, half = show.pure(corner.degrees), half_corner(corner.degrees)
        if wall.corner > 180:
            read = show.pure(wall.corner)
            yield f"An outside corner: 360 − {read} = {degrees}"
        yield f"Corner {number}, {degrees}°: miter 90 − {degrees} ÷ 2 = {angle_text(half)}"


def _turns_worked(show, run):
    turned = abs(sum(corner.turned for corner in run.corners))
    if run.closed and turned != 360:
        yield f"All the corners turn {show.pure(turned)}°, a whole turn is 360°"


def _returns_worked(given, show):
    if given.around == "closed":
        return
    total = sum(layer.projection for layer in given.layers)
    for side, wall in (("left", given.walls[0]), ("right", given.walls[-1])):
        if getattr(given, f"{side}_end") == "return":
            long = show.number(wall.length)
            yield (
                f"{side.capitalize()} mitered return: the outside layer ends at {long}, so the "
                f"first one turns at {long} − {show.number(total)} = "
                f"{show.number(wall.length - total)} of its back"
            )


def _joints_worked(show, pieces, several):
    """What each joint that isn't at 45 adds or takes, once in each layer."""
    seen = set()
    for piece in pieces:
        for joint, adds in zip(piece.leg.joints, piece.adds, strict=True):
            degrees = abs(joint.setting)
            where = f"{joint.name}{f', layer {piece.layer}' if several else ''}"
            if degrees in (0, 45) or where in seen or joint.kind == "butted":
                continue
            seen.add(where)
            size = show.number(piece.projection)
            yield (
                f"{where[0].upper()}{where[1:]}: {size} × tan {show.pure(degrees)}° = {size} × "
                f"{show.pure(tangent(degrees))}{show.equals(abs(adds))}"
            )


def _piece_worked(show, piece, full, name):
    if any(sign(taken) for taken in piece.taken) or piece.extra:
        yield from _back_worked(show, piece, full, name)
    terms = "".join(f" {_signed(show, adds)}" for adds in piece.adds if sign(adds))
    if terms or not (any(sign(taken) for taken in piece.taken) or piece.extra):
        yield f"{name}, face: {show.number(piece.back)}{terms}{full.equals(piece.face)}"
    if piece.is_between:
        out = show.number(max(piece.adds))
        whole = full.equals(piece.tip_to_tip)
        yield f"{name}, tip to tip: {show.number(piece.back)} + {out}{whole}"


def _back_worked(show, piece, full, name):
    size, terms = show.number(piece.projection), show.number(piece.line)
    for side, joint, taken in zip(_SIDES, piece.leg.joints, piece.taken, strict=True):
        if not sign(taken):
            continue
        terms += f" {_signed(show, -taken)}"
        if joint.kind == "butted" and joint.corner < RIGHT_ANGLE:
            cut = f"{size} × cot {show.pure(joint.corner)}°{show.equals(taken)}"
            yield f"{name}, {side} end: {cut}, where the corner leans over the butted piece"
    terms += f" + {show.number(piece.extra)}" if piece.extra else ""
    why = ", with the spring" if piece.extra else ""
    yield f"{name}, back{why}: {terms}{full.equals(piece.back)}"


def _signed(show, length):
    return f"{'−' if sign(length) < 0 else '+'} {show.number(abs(length))}"
