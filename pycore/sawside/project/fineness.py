"""What a reading may be off by: what the person says, or else by how finely it was taken.

How finely is what it says itself, or else what its text shows; it is taken to be off by half of
that at most. Either is either way, and to one side only where the person said that it was light or
heavy of its mark.
"""

from fractions import Fraction

from sawside.lengths.marks import GRIDS


def fineness_of(worked):
    """The step of the marks that a worked reading was read on, in exact inches.

    Without one of its own it is the mark of the settings, where the number lies on it; else the
    coarsest marks that have the number.
    """
    kept = worked.entry.get("fineness")
    if kept:
        return GRIDS[kept].step
    step = worked.settings.grid.step
    if _on(worked.read_as, step):
        return step
    fitting = [grid.step for grid in GRIDS.values() if _on(worked.read_as, grid.step)]
    return max(fitting, default=min(grid.step for grid in GRIDS.values()))


def bounds(worked):
    """(least, most) that the true length may differ from what was read, in exact inches.

    A sum of names is off by what they are; only what the person says of the sum itself counts here.
    """
    none = Fraction(0)
    if worked.power != 1 or (worked.names and worked.off is None):
        return none, none
    half = fineness_of(worked) / 2 if worked.off is None else worked.off
    side = worked.entry.get("side")
    return (none if side == "heavy" else -half), (none if side == "light" else half)


def _on(value, step):
    return (value / step).denominator == 1
