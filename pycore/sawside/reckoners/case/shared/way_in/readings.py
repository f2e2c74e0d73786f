"""What is filled in of the way in of a case: a doorway, the turn of a stair."""

from sawside.reckoners.fields import choice, length

WAYS_IN = {
    "no": "None to check",
    "yes": "Check a doorway",
    "stair": "Check a stair turn",
    "both": "Check a doorway and a stair",
}
_DOOR = {"shown_when": ("door", ("yes", "both"))}
_STAIR = {"shown_when": ("door", ("stair", "both"))}

WAY_IN = (
    choice("door", "Way in", WAYS_IN, in_short="{}"),
    length(
        "width",
        "Case width",
        least="1/2 in",
        in_short="{} wide",
        shown_when=("door", ("yes", "stair", "both")),
    ),
    length(
        "door_width",
        "Doorway width",
        help="At its narrowest: door open, from its face to the other stop.",
        least="1 in",
        **_DOOR,
    ),
    length("door_height", "Doorway height", least="1 in", **_DOOR),
    length(
        "stair_below",
        "Width below the turn",
        help="The narrower of stair and landing, clear of rails, newels and trim.",
        least="1 in",
        **_STAIR,
    ),
    length(
        "stair_above",
        "Width above the turn",
        least="1 in",
        blank_means="Same as below it.",
        **_STAIR,
    ),
    length(
        "headroom",
        "Headroom at the turn",
        help="Straight up at its lowest, over the landing and the steps beside it.",
        least="1 in",
        **_STAIR,
    ),
)


def asks_for_door(given):
    """Whether a doorway is checked."""
    return given.door in ("yes", "both")


def asks_for_stair(given):
    """Whether the turn of a stair is checked."""
    return given.door in ("stair", "both")
