"""Where a molding goes around a case: boxes in inches, as `geometry/placed.py` says.

A piece is the box around its profile: of crown as high as it drops and as deep as it projects.
The corner in front belongs to the front piece, and the end of a run to its return: there the
pieces are mitered, and their boxes would be in one place. What no fraction can tell is told to a
hair.
"""

from sawside.geometry.placed import Box, Placed
from sawside.lengths.real import nearby


def molding_in_place(given, run, levels):
    """What `Reckoning.wraps` is: `levels` tells, by the height of the case, from where to where the
    molding goes up."""

    def wraps(case, fronts):
        lined_up = [
            each.outside.left
            for each in (case, *fronts)
            if each.outside.right - each.outside.left == given.case_width
        ]
        if not lined_up:
            return None
        faces = [each.outside.front for each in (case, *fronts)]
        front = -given.frame if run.around.showing and given.frame else min(faces)
        around = _Around(given, run, lined_up[0], front)
        low, high = (nearby(each) for each in levels(case.outside.high))
        return Placed(
            {key: (Box(*across, low, high, *inward),) for key, across, inward in around.pieces()}
        )

    return wraps


class _Around:
    """The lines of a run from above: x0 and x1 are the left and right edge of what it wraps across
    the front, z its face; `out` is how far the molding projects."""

    def __init__(self, given, run, left, front):
        self._given, self._run, self._front = given, run, front
        self._out = nearby(run.projection)
        self._showing = run.around.showing
        lines = {line.key: line for line in run.lines}
        past = {step.field: step.inches for step in lines["front"].steps}
        self._edges = {
            "left": left - past.get("frame_left", 0),
            "right": left + given.case_width + past.get("frame_right", 0),
        }

    def pieces(self):
        """(key, (left, right), (front, back)) of each piece."""
        ends, outer = [], []
        inward = self._front - self._out, self._front
        for side, way in (("left", 1), ("right", -1)):
            edge = self._edges[side]
            if side in self._showing:
                ends.append(edge - way * self._out)
                outer += self._side(side, way)
                continue
            far, cap = self._end(side, edge, way)
            ends.append(far)
            if cap:
                outer.append((f"{side}_self_return", cap, inward))
        return [("front", tuple(ends), inward), *outer]

    def _side(self, side, way):
        """The piece along a side, and the return that ends it."""
        edge, back = self._edges[side], self._given.case_depth
        across = _sorted(edge - way * self._out, edge)
        far, cap = self._end(side, back, -1)
        yield f"{side}_side", across, (self._front, far)
        if cap:
            reach = edge + way * self._run.past.get(side, 0)
            yield f"{side}_self_return", _sorted(edge - way * self._out, reach), cap

    def _end(self, side, at, way):
        """(where the inside edge ends, from where to where its return goes or None); `way` is 1
        where the run goes up from there, -1 where it comes to it."""
        kind, given = getattr(self._given, f"{side}_end"), self._given
        if kind == "wall":
            return at - way * (given.scribe or 0), None
        if kind == "cope":
            return at, None
        tip = at + way * (getattr(given, f"{side}_short") or 0)
        return tip + way * self._out, _sorted(tip, tip + way * self._out)


def _sorted(one, other):
    return (one, other) if one < other else (other, one)
