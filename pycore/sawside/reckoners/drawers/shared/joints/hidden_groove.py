"""Where the groove of a drawer bottom doesn't show, in words."""

from sawside.lengths.fine import on_fine_marks


def groove_between(place, show):
    """ "1/2″ to 3/4″ from the reference edge" for a place (from, to) in inches, told inward."""
    low, high = place
    ends = on_fine_marks(low, show, "reach"), on_fine_marks(high, show, "go in")
    return f"{' to '.join(show.bare(each) for each in ends)} from the reference edge"
