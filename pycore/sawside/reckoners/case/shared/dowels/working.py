"""How a doweled joint is worked out, line by line, with this case's numbers."""

from sawside.reckoners.case.shared.dowels.test_hole import over_by

_MOST_LINES = 6


def working(given, show, joint):
    """Every line: the dowel, the depth and stop, the places, the wood that is left."""
    stock, bit = show.number(joint.thickness), show.number(joint.diameter)
    if given.diameter is None:
        half = show.number(joint.thickness / 2)
        yield f"Thickest dowel: {stock} ÷ 2 = {half}; common size that fits {bit}"
    long, play, depth = (show.number(each) for each in (joint.length, given.play, joint.depth))
    yield f"Hole depth: {long} ÷ 2 + {play} = {depth}"
    stop = show.number(joint.depth + joint.guide)
    yield f"Drill stop: {depth} + {show.number(joint.guide)} = {stop}"
    over = over_by(given, show, joint)
    if over is not None:
        made, told = given.test_hole, given.test_hole - over
        how, more, less = ("deep", made, told) if over > 0 else ("shallow", told, made)
        off = f"{show.number(more)} − {show.number(less)} = {show.number(abs(over))}"
        yield f"Test hole{f' too {how}' if over else ''}: {off}"
    yield from _places(given, show, joint)
    if given.from_face is None:
        yield f"Center from the face: {stock} ÷ 2 = {show.number(joint.from_face)}"
    yield from _left(given, show, joint)


def _places(given, show, joint):
    rail, inset, count = show.number(joint.rail), show.number(joint.inset), len(joint.centers)
    if count == 1:
        if given.inset is None:
            yield f"One dowel, centered: {rail} ÷ 2{show.equals(joint.inset)}"
        return
    if given.inset is None:
        quarter = show.number(joint.rail / 4)
        yield f"A quarter of the rail: {rail} ÷ 4 = {quarter}; inset {inset}"
    apart = show.number(joint.spacing)
    yield f"On center: ({rail} − 2 × {inset}) ÷ {count - 1} = {apart}"
    for number, center in enumerate(joint.centers[:_MOST_LINES]):
        other = f"{rail} − {show.number(center)}{show.equals(joint.rail - center)}"
        yield (
            f"Dowel {number + 1}: {inset} + {number} × {apart}{show.equals(center)}; from the "
            f"other edge {other}"
        )


def _left(given, show, joint):
    stile, depth, stock, bit, face = (
        show.number(each)
        for each in (joint.stile, joint.depth, joint.thickness, joint.diameter, joint.from_face)
    )
    yield f"Left past the hole: {stile} − {depth} = {show.number(joint.beyond)}"
    if given.both == "yes":
        yield f"Left between holes: {stile} − 2 × {depth} = {show.number(joint.between)}"
    front, back = (show.number(each) for each in joint.at_faces)
    yield f"Left at the face: {face} − {bit} ÷ 2 = {front}"
    yield f"Left at the back: {stock} − {face} − {bit} ÷ 2 = {back}"
    if joint.spacing is not None:
        apart = show.number(joint.spacing - joint.diameter)
        yield f"Left between two dowels: {show.number(joint.spacing)} − {bit} = {apart}"
    nearest = show.number(min(*joint.centers, *joint.mirrored))
    yield f"Left at the rail’s edge: {nearest} − {bit} ÷ 2 = {show.number(joint.at_edge)}"
