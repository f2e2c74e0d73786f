"""Rows of pin holes in a side: what may not be drilled, and what is said of the wood around it."""

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text


def refuse_rows(given, show, pitch):
    """Refuse holes that run into each other, an edge, or the other row."""
    for bad, message, remedy, field in (
        (
            pitch <= given.diameter,
            f"Holes {fine_text(pitch, show)} apart and {fine_text(given.diameter, show)} wide run "
            "into each other.",
            "Give a larger pitch or a smaller hole.",
            "own_pitch" if given.pitch == "own" else "diameter",
        ),
        (
            given.front <= given.diameter / 2,
            "The front row would break out of the front edge.",
            "Give a front setback of more than half the hole.",
            "front",
        ),
        (
            given.back <= given.diameter / 2,
            "The back row would break out of the back edge.",
            "Give a back setback of more than half the hole.",
            "back",
        ),
        (
            given.first <= given.diameter / 2,
            "The first hole would break out of the lower end.",
            "Give a first hole that is higher.",
            "first",
        ),
        (
            given.depth - given.front - given.back <= given.diameter,
            f"The two rows meet: setbacks of {show.text(given.front)} and {show.text(given.back)} "
            f"in a side {show.text(given.depth)} deep.",
            "Give smaller setbacks.",
            "back",
        ),
    ):
        if bad:
            raise Refusal("impossible", message, remedy, field=field)


def row_warnings(given, show, pitch):
    """What is wrong with the wood around the holes; it can still be drilled."""
    behind = given.thickness - given.hole_depth
    if behind <= 0:
        yield (
            f"The holes come through: they are {fine_text(given.hole_depth, show)} deep and the "
            f"side is {fine_text(given.thickness, show)}. Make them shallower."
        )
    elif behind < given.thickness / 8:
        yield (
            f"Only {fine_text(behind, show)} is left behind the holes: the drill's point may come "
            "through."
        )
    if pitch < 2 * given.diameter:
        yield (
            f"Only {fine_text(pitch - given.diameter, show)} of wood is left between two holes; "
            "they may split out."
        )
