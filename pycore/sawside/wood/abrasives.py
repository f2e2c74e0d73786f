"""Grits of coated abrasives by the mean size of their grains, and the steps from one to another.

P grades: ISO 6344, which has them from FEPA 43. CAMI grades, without a letter: ANSI B74.18. Sizes
in micrometers; charts differ by a few of them, so they tell the order and the step.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.wood.tables import rows


@dataclass(frozen=True, slots=True)
class Grit:
    """A grade of a scale, "P" or "CAMI"; `size` is its mean grain in micrometers."""

    scale: str
    number: int
    size: Fraction

    @property
    def name(self):
        """As it is printed on the back: "P120", or "120" of CAMI."""
        return f"{'P' if self.scale == 'P' else ''}{self.number}"


def _read():
    scales = {"P": {}, "CAMI": {}}
    for row in rows("abrasive_grits.csv"):
        number = int(row["grit"])
        scales[row["scale"]][number] = Grit(row["scale"], number, Fraction(row["micrometers"]))
    return scales


GRITS = _read()
"""The grades of each scale by their number, from coarse to fine."""
_SELDOM = {"P": {36, 50, 240, 280, 360, 500, 1200}, "CAMI": {36, 50, 360, 500}}
"""What few stores carry (common practice, no source)."""
LEAST_STEP = Fraction("1.4")
"""By less than this there is no way from each grade to the next one of its scale."""


def nearest(grit):
    """The grade of the other scale whose grains are nearest in size, by their ratio."""
    others = GRITS["CAMI" if grit.scale == "P" else "P"].values()
    return min(others, key=lambda each: max(each.size / grit.size, grit.size / each.size))


def steps(first, last, most):
    """The grits from `first` to `last`, none more than `most` times as coarse as the next.

    As few as can be; of these the ones whose largest step is the smallest, and then whose last
    step is. Only what stores carry, unless that has no way. `most` from `LEAST_STEP` up.
    """
    if first.size <= last.size:
        return [last]
    between = [each for each in GRITS[first.scale].values() if last.size < each.size < first.size]
    carried = [each for each in between if each.number not in _SELDOM[first.scale]]
    return _way([first, *carried, last], most) or _way([first, *between, last], most)


def _way(grits, most):
    """The way through such a list from coarse to fine, or None."""
    best = {grits[0]: (0, Fraction(1), Fraction(1), (grits[0],))}
    for at, grit in enumerate(grits[1:], 1):
        ways = []
        for before in grits[:at]:
            step = before.size / grit.size
            if before in best and step <= most:
                count, largest, _, way = best[before]
                ways.append((count + 1, max(largest, step), step, (*way, grit)))
        if ways:
            best[grit] = min(ways, key=lambda each: each[:3])
    return list(best[grits[-1]][3]) if grits[-1] in best else None


def scratch(grit):
    """How deep its scratches are, in micrometers: about half of a grain (common practice, no
    source)."""
    return grit.size / 2
