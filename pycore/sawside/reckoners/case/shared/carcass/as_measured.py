"""Thicknesses and depths, told as they were measured: on a mark where they are on one."""

from sawside.lengths.fine import on_fine_marks


def as_measured(length, show):
    """`Rounded` on the person's marks where it's exact there, or else on the finest ones."""
    rounded = show.rounded(length)
    return rounded if rounded.direction == "exact" else on_fine_marks(length, show)


def measured_text(length, show):
    """ "23/32″", "18 mm", "≈ 0.71″"."""
    return show.brief(as_measured(length, show))
