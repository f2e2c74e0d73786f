"""Equal openings of a face frame on one's marks, and the refusal where they have no room."""

from fractions import Fraction

from sawside.errors import Refusal

LEAST = Fraction(1, 2)
"""The least opening that is taken for one, in inches. Common practice, no source."""


def equal_openings(show, room, count):
    """`room` in as many equal openings. Where equal ones would have to be rounded, each is on one
    of the person's marks and none is more than a mark wider than another, so that what is cut
    fills the frame; what is on no mark stays with one of them."""
    equal = room / count
    if count == 1 or show.rounded(equal).direction == "exact":
        return [equal] * count
    step = show.settings.grid.step
    marks, rest = divmod(room, step)
    each, wider = divmod(marks, count)
    narrow = each * step
    return [narrow] * (count - wider - 1) + [narrow + rest] + [narrow + step] * wider


def no_room(show, noun, wood, size, field):
    """The refusal where so much `wood` leaves too little of a frame of this `size`."""
    return Refusal(
        "impossible",
        f"The {noun} take up {show.text(wood)} of a frame {size}: an opening would be under "
        f"{show.text(LEAST)}.",
        f"Use fewer or narrower {noun}, or a bigger frame.",
        field=field,
    )
