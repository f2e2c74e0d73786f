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
    coarsest marks that have the number. What is typed in millimeters was read on their marks, also
    where inches have one at the same place.
    """
    kept = worked.entry.get("fineness")
    if kept:
        return GRIDS[kept].step
    grid = worked.settings.grid
    fitting = [each for each in GRIDS.values() if _on(worked.read_as, each.step)]
    if _is_metric(worked.reading.echo):
        fitting = [each for each in fitting if each.unit == "mm"] or fitting
    if grid in fitting:
        return grid.step
    steps = [each.step for each in fitting]
    return max(steps, default=min(each.step for each in GRIDS.values()))


def _is_metric(echo):
    """Whether a length was typed without an inch or a foot in it."""
    return "″" not in echo and "′" not in echo


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
