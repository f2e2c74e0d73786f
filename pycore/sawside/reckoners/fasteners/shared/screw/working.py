"""How a screw is worked out, line by line, with this case's numbers."""

from sawside.reckoners.fasteners.shared.decimals import decimals
from sawside.reckoners.fasteners.shared.screw.driven import PILOT, ROOT
from sawside.reckoners.fasteners.shared.screw.pull import is_figured, pull_working
from sawside.wood.drill_bits import as_bit
from sawside.wood.fastening import FROM_EDGE, FROM_END, HELD


def working(given, show, screw):
    """Every line: length, holes, countersink, distances, pull."""
    number = show.number
    over, sink, through = number(given.over), number(given.sink), number(screw.through)
    longest = number(screw.through + given.under - given.spare)
    yield f"Through the first piece: {over} − {sink} = {through}"
    yield f"Two thirds past it: {HELD} × {through} = {number(screw.wanted)} long or more"
    yield f"Longest: {through} + {number(given.under)} − {number(given.spare)} = {longest}"
    yield f"Reach: {number(screw.length)} − {through} = {number(screw.reach)}"
    left = number(screw.left)
    yield f"Left past the tip: {number(given.under)} − {number(screw.reach)} = {left}"
    yield from _holes(given, show, screw)
    shank, end, edge = (decimals(show, each) for each in (screw.shank, *screw.room[:2]))
    yield f"From an end: {FROM_END[True]} × {shank} = {end}"
    if screw.room[1] < FROM_EDGE * screw.shank:
        yield f"From an edge, centered on it: {number(screw.edge)} ÷ 2 = {number(screw.room[1])}"
    else:
        yield f"From an edge: {show.pure(FROM_EDGE)} × {shank} = {edge}"
    if is_figured(given):
        yield from pull_working(given, show, screw)


def _holes(given, show, screw):
    shank, root = decimals(show, screw.shank), decimals(show, screw.root)
    clear, spare = (
        decimals(show, each) for each in (screw.clearance, screw.clearance - screw.shank)
    )
    yield f"Clearance hole: next bit up, {clear} − {shank} = {spare} free"
    if given.root is None:
        yield f"Root: {show.pure(ROOT)} × {shank} = {root}"
    if given.pilot is None:
        share = PILOT[given.wood]
        wanted, bit = decimals(show, share * screw.root), as_bit(screw.pilot, given.bits)
        yield f"Pilot: {show.pure(share)} × {root} = {wanted}, nearest bit {show.bare(bit)}"
    if screw.cone is not None:
        head, deep = decimals(show, screw.head), decimals(show, screw.cone)
        yield f"Countersink: ({head} − {shank}) ÷ 2 ÷ tan {screw.half_cone}° = {deep} deep"
