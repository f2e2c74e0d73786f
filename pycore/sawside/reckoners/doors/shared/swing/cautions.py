"""What is said beside the swing of a door."""

from sawside.wood.caution import Caution
from sawside.wood.saw import cautions_at_the_saw

_STOP = Caution(
    "Add a stop before it hits.",
    "Add a stop, a restricting clip or a bumper, so the door stops before it hits. A door that "
    "slams its handle into a wall pulls on its hinges and screws.",
)
_CUP = Caution(
    "Check the hinge maker’s sheet.",
    "A cup hinge moves its pivot as it opens. These angles treat it as one fixed pivot, so they’re "
    "close, not exact. The hinge maker’s sheet comes first: test one hinge on scrap.",
)
_PINCH = Caution(
    "Keep fingers clear of the hinge edge.",
    "Hold the door by its free edge when you try it: a hinge edge pinches. Have a helper hold a "
    "heavy door, or one with glass, while you drive the screws.",
)


def cautions(given, swing, edge, passes):
    """Every caution of this swing, what doesn't clear first."""
    if passes is False:
        yield (
            "The drawer hits the door. Fur the drawer out from the side, or give the door more "
            "room to open."
        )
    if swing.touch is not None:
        yield _STOP
    if given.hinge == "cup":
        yield _CUP
    if edge is not None and edge.bevel:
        yield from cautions_at_the_saw()
    yield _PINCH
