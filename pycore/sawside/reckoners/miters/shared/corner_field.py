"""A corner as an angle finder reads it: one convention for every question.

A corner is the angle between two walls, edges or pieces: 90 where they are square to each other,
inside or outside. At an outside corner an angle finder can also be read from the side of the room,
past 180: 270 there is the same corner as 90 read around it. So what is past 180 is an outside
corner of 360 less that, and is refused where there can only be an inside one.
"""

from sawside.errors import Refusal
from sawside.lengths.show import angle_text, degrees_text
from sawside.reckoners.fields import angle

HALF, WHOLE = 180, 360
FLATTEST = 179
"""In degrees: what is nearer to straight is no corner that anybody miters."""


def corner_field(key, label, between="the two walls", *, least, default="90", only="", **more):
    """The field of a corner, from `least` degrees up; `only` says more of what it may be."""
    help_ = (
        f"Between {between}, as an angle finder reads it: square is 90. "
        f"{only or 'Past 180 is an outside corner: 270 is 90 outside.'}"
    )
    bounds = {"least": str(least), "most": str(WHOLE - least)}
    return angle(key, label, **{"help": help_, "default": default} | bounds | more)


def corner_of(given, key, *, most, outside=True, instead=None, **place):
    """The corner of a field in degrees, at most `most`, or None where it is not asked for.

    Refusals: "conflict" for one past 180 where it can't be `outside`, "range" for one that is as
    good as straight. `instead` is the remedy where no field offers an outside corner. `place`
    names the field of rows that it stands in, else it is `key`.
    """
    degrees, place = getattr(given, key), place or {"field": key}
    if degrees is None:
        return None
    text, around = angle_text(degrees), angle_text(WHOLE - degrees)
    if degrees > HALF and not outside:
        choose = f"Read it inside the room, or choose an outside corner of {around}."
        raise Refusal(
            "conflict",
            f"{text} is past 180: that’s an outside corner, and this is an inside one.",
            instead or choose,
            **place,
        )
    folded = min(degrees, WHOLE - degrees)
    if folded > most:
        raise Refusal(
            "range",
            f"A corner of {text} is nearly straight.",
            f"Check it: at most {most}, or at least {WHOLE - most} for an outside corner.",
            **place,
        )
    return folded


def past_lines(given, *keys):
    """The lines of working of corners that were read past 180."""
    return tuple(
        f"An outside corner: 360 − {degrees_text(degrees)} = {degrees_text(WHOLE - degrees)}"
        for degrees in (getattr(given, key) for key in keys)
        if degrees is not None and degrees > HALF
    )
