"""What is said of screws into studs, and of a case that none or only one of them holds."""

from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.reckoners.installing.shared.cautions import LIFT, TIP_OVER, hidden_in_walls
from sawside.reckoners.installing.shared.studs.screw import SAFE, bite_wanted

_ANCHORS = (
    "Hollow-wall anchors hold much less than a stud: their maker’s rating comes first. Hanging "
    "cabinets need studs or blocking; ask a licensed contractor if you aren’t sure of the wall."
)


def cautions_of(given, show, studs, screw):
    """Those of this case first, then the usual ones."""
    return (*_held(studs), *_reach(given, show, screw), hidden_in_walls(show), LIFT, TIP_OVER)


def _held(studs):
    many = sum(stud.screw is not None for stud in studs)
    if many == 0:
        yield (
            "No screw goes into a stud here. Move the case, have blocking put into the wall, or "
            f"screw a rail to studs beside it and hang the case on that. {_ANCHORS}"
        )
    elif many == 1:
        yield (
            "Only one stud holds it. Add blocking, or anchors near both ends so it can’t swing. "
            f"{_ANCHORS}"
        )


def _reach(given, show, screw):
    """What is said of a bite that is small, and of one that goes where cables may be."""
    told = fine_text(on_fine_marks(screw.reach, show, "be there").mark, show)
    if screw.reach < bite_wanted(given):
        yield (
            f"It bites only {told}. Use a screw that reaches {fine_text(bite_wanted(given), show)} "
            "or more into the stud (shop practice)."
        )
    if screw.reach > SAFE:
        yield (
            f"It reaches {told} into the stud, deeper than {fine_text(SAFE, show)}: past there, "
            "cables and pipes need no steel plate. Use a shorter or thinner screw."
        )
