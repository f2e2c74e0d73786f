"""Pieces cut from a stick as polygons: corners, the strips that the blade turns to dust, and knots.

Shares no code with the planner: floats, and each shape a convex polygon that is cut by half planes.
"""

from math import cos, hypot, radians, tan

CLOSE = 1e-6


def outline(near, far, width):
    """The corners of a piece from (start, end) along its near and its far edge."""
    return [
        (float(near[0]), 0.0),
        (float(near[1]), 0.0),
        (float(far[1]), float(width)),
        (float(far[0]), float(width)),
    ]


def kerfs(corners, kerf):
    """What the blade takes at the left and the right end of a piece, as two polygons."""
    (a, _), (b, _), (c, width), (d, _) = corners
    left, right = (kerf * hypot(1, (far - near) / width) for near, far in ((a, d), (b, c)))
    return (
        [(a - left, 0.0), (a, 0.0), (d, width), (d - left, width)],
        [(b, 0.0), (b + right, 0.0), (c + right, width), (c, width)],
    )


def area(corners):
    """The area of a polygon."""
    pairs = zip(corners, corners[1:] + corners[:1], strict=True)
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs)) / 2


def common(one, other):
    """The area that two convex polygons (corners counterclockwise) share: Sutherland, Hodgman,
    "Reentrant polygon clipping", Communications of the ACM 17 (1974)."""
    left = list(one)
    for a, b in zip(other, other[1:] + other[:1], strict=True):
        kept = []
        for p, q in zip(left, left[1:] + left[:1], strict=True):
            sides = [(b[0] - a[0]) * (r[1] - a[1]) - (b[1] - a[1]) * (r[0] - a[0]) for r in (p, q)]
            if sides[0] >= 0:
                kept.append(p)
            if sides[0] * sides[1] < 0:
                share = sides[0] / (sides[0] - sides[1])
                kept.append((p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])))
        left = kept
        if not left:
            return 0.0
    return area(left)


def wanted(length, left, right, width):
    """The corners of a piece by its longer edge and the degrees of its miters: near edge first."""
    adds = [float(width) * tan(radians(float(each))) for each in (left, right)]
    near = float(length) if sum(adds) >= 0 else float(length) + sum(adds)
    return [(0.0, 0.0), (near, 0.0), (near - adds[1], float(width)), (adds[0], float(width))]


def attitudes(corners, width, turning):
    """The ways in which a piece may lie: as it is, else end for end, and each turned over too."""
    if not turning:
        return [corners]
    around = [[(-x, width - y) for x, y in corners], [(x, width - y) for x, y in corners]]
    around.append([(-x, y) for x, y in corners])
    return [corners, *around]


def edges(corners, width):
    """[start and end of the near edge, and of the far one], from the start of the near one on."""
    near, far = (
        sorted(x for x, y in corners if abs(y - edge) < CLOSE) for edge in (0.0, float(width))
    )
    return [x - near[0] for x in (*near, *far)]


def faults(request, plan):
    """What is wrong with a plan, as sentences: shapes, overlaps, dust in a piece, bad wood."""
    said, width, kerf = [], float(request.width or 1), float(request.kerf)
    for stick in plan.sticks:
        length, trim = float(stick.stock.length), float(request.trim)
        bad = [
            [(float(a), 0.0), (float(b), 0.0), (float(b), width), (float(a), width)]
            for a, b in stick.stock.bad
        ]
        pieces = []
        for laid in (each for section in stick.sections for each in section.laid):
            corners = outline(laid.near, laid.far, width)
            pieces.append(corners)
            said += _shape_faults(request, laid, corners, width)
            if min(x for x, _ in corners) < trim - CLOSE or (
                max(x for x, _ in corners) > length - trim + CLOSE
            ):
                said.append(f"{corners} is not in {trim} to {length - trim}")
        for at, corners in enumerate(pieces):
            dust = _in_stick(kerfs(corners, kerf), corners, length, trim)
            others = pieces[:at] + pieces[at + 1 :]
            for what in (corners, *dust):
                said += [f"{what} and {o}" for o in others if common(what, o) > CLOSE]
                said += [f"{what} in bad {b}" for b in bad if common(what, b) > CLOSE]
    return said


def _in_stick(dust, corners, length, trim):
    """Only the cuts that are made: a square end that is the end of what is used needs none."""
    left, right = dust
    (a, _), (b, _), (c, _), (d, _) = corners
    if abs(a - d) > CLOSE or abs(a - trim) > CLOSE:
        yield left
    if abs(b - c) > CLOSE or abs(b - (length - trim)) > CLOSE:
        yield right


def _shape_faults(request, laid, corners, width):
    piece = request.pieces[laid.place]
    shape = wanted(piece.length, piece.left, piece.right, width)
    ways = [edges(each, width) for each in attitudes(shape, width, request.turning)]
    cut = edges(corners, width)
    if not any(
        all(abs(one - other) < 0.0011 for one, other in zip(way, cut, strict=True)) for way in ways
    ):
        return [f"{piece} is laid as {cut}, not as one of {ways}"]
    near, far = laid.near[1] - laid.near[0], laid.far[1] - laid.far[0]
    if max(near, far) < piece.length - CLOSE:
        return [f"{piece} is too short"]
    return []


def longest_frame(width, kerf, room, count):
    """Sides of a frame, all alike, that just go into a stick so often, head to tail: by adding up
    parallelograms of the middle length and the kerf along the edge at 45 degrees."""
    return (room - width - (count - 1) * kerf / cos(radians(45))) / count + width
