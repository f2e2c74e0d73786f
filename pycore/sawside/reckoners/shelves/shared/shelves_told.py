"""Shelves that have their place, told: marks and openings, the case drawn, its story stick."""

from sawside.drawing.lazy import force, lazy
from sawside.drawing.paper.story_stick import side_stick
from sawside.drawing.shelves.case import case_from_the_front, case_words
from sawside.geometry.case import Shelving
from sawside.reckoners.declaration import Reckoning
from sawside.reckoners.shelves.shared.case_fields import (
    CAUTIONS,
    case_of,
    marked_answers,
    origin_of,
)


def laid_out(given, inside, bottoms, thicknesses):
    """The `Shelving` of a form: `bottoms` are exact places above the inside bottom, rising."""
    case = case_of(given, inside)
    return Shelving(case, tuple(bottoms), tuple(thicknesses), given.edge, origin_of(given))


def shelves_told(
    show,
    shelving,
    *,
    answers,
    working,
    openings,
    alike=False,
    more_words="",
    main="",
    verdict="",
    **drawn,
):
    """The `Reckoning`; `answers` go before those of the marks, and replace them.

    `openings` are exact, from the bottom up; where they are all `alike` one is drawn with its size.
    `main` and `verdict` are as a `Reckoning` has them, all else as the drawing of a case.
    """
    return Reckoning(
        answers=marked_answers(shelving, show) | answers,
        working=working,
        drawing=_drawn(show, shelving, openings, alike, more_words, drawn),
        cautions=CAUTIONS,
        stick=side_stick(show, shelving),
        main=main,
        verdict=verdict,
        shelving=shelving,
    )


@lazy
def _drawn(show, shelving, openings, alike, more_words, drawn):
    texts = [show.brief(each) for each in openings]
    case = shelving.case
    high = show.brief(case.overall if case.whole else case.inside)
    picture = case_from_the_front(
        show,
        shelving,
        words=case_words(shelving, high, texts) + more_words,
        openings=texts[:1] if alike else texts,
        **drawn,
    )
    return force(picture)
