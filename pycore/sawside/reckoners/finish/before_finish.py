"""What is done to the wood before the first coat, and when nail holes are filled."""

from sawside.reckoners.declaration import NONE_DONE, Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice
from sawside.reckoners.finish.shared.before_steps import VENEER, steps_before
from sawside.reckoners.finish.shared.finish_cautions import DUST, SOLVENT, SOURCES
from sawside.reckoners.finish.shared.finishes import FINISHES, NAMES

_FILLS = {"before": "Before the primer", "after": "After the first coat"}


def compute(given, show, done=NONE_DONE, now=None):
    """When nail holes are filled, in words, and the steps; none of them has a time."""
    steps = steps_before(given, show)
    finish = FINISHES[given.finish]
    left = [step for step in steps if step.key not in done]
    nailed = given.nails == "nailed"
    main = _main(given, done, left)
    answers = {"fill": _FILLS[finish.fill] if nailed else "None to fill"}
    answers |= {"steps": len(steps)} if main == "steps" else {}
    return Reckoning(
        answers=answers | ({"next": left[0].said} if done and left else {}),
        working=("Nothing is figured here: the steps and their order are shop practice.",),
        cautions=(
            *((VENEER,) if given.wood == "veneer" else ()),
            DUST,
            *((SOLVENT,) if finish.flammable else ()),
        ),
        main=main,
        verdict=_verdict(given, done, left),
        steps=steps,
    )


def _main(given, done, left):
    if done and left:
        return "next"
    return "fill" if given.nails == "nailed" and not done else "steps"


def _verdict(given, done, left):
    if done:
        return "Next" if left else "Ready for the finish, steps done"
    return "Fill the nail holes" if given.nails == "nailed" else "Steps to tick"


RECKONER = Reckoner(
    key="before_finish",
    title="Before the finish",
    asks="What has to be done to the wood before the first coat?",
    words=(
        "before the finish, prep, preparation, prepare, surface, finish, finishing, nail holes, "
        "fill, filler, putty, set nails, squeeze-out, dust, tack cloth, raking "
        "light, scratches, ease edges, break edges, raise the grain, veneer, checklist, check list"
    ),
    order=20,
    job="finish",
    ticked=True,
    fields=(
        choice("finish", "Finish", NAMES, default="wiping", in_short="{}"),
        choice("nails", "Nails", {"nailed": "Nailed, holes show", "none": "None to fill"}),
        choice("wood", "Surface", {"solid": "Solid wood", "veneer": "Veneer or plywood"}),
    ),
    answers=(
        Answer("fill", "Fill nail holes", "text"),
        Answer("next", "Next step", "text"),
        Answer("steps", "Steps", "count"),
    ),
    source=f"The steps and their order are common practice, no source. {SOURCES}",
    compute=compute,
    example={"finish": "wiping", "nails": "nailed", "wood": "solid"},
)
