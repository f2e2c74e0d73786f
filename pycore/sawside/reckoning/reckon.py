"""Answering one question: values in as they were typed, the whole answer out as data."""

from sawside.drawing.lazy import force
from sawside.errors import Refusal, quoted
from sawside.lengths.show import Show
from sawside.lengths.tape import stretch
from sawside.reckoners import RECKONERS
from sawside.reckoning.answers import part_told, told
from sawside.reckoning.past_the_saw import past_the_saw
from sawside.reckoning.values import read_values


def find(key):
    """The reckoner of a key; "unknown" when there is none."""
    reckoner = RECKONERS.get(key) if isinstance(key, str) else None
    if reckoner is None:
        raise Refusal(
            "unknown",
            f"There’s no question {quoted(str(key))}.",
            "Choose a question from the list.",
            field="reckoner",
        )
    return reckoner


def reckon(reckoner, values, settings, names=None):
    """The answer to a reckoner's question, as the contract of `reckon` (without "ok").

    `names` may stand in its texts. Raises `Refusals` with one refusal for each bad field, or the
    reckoner's own `Refusal`.
    """
    form = read_values(reckoner, values, settings, names)
    show = Show(settings, form.lengths(reckoner))
    return reckoning_told(reckoner, form, reckoner.compute(form.given, show), show)


def _tape(first, found, show):
    if first.kind != "length":
        return None
    rounded = show.rounded(found.answers[first.key], first.rounding)
    return stretch(rounded, found.tape or show.settings.grid)


def reckoning_told(reckoner, form, found, show):
    """Everything that was found, as the contract of `reckon`."""
    first = reckoner.answers[0]
    return {
        "reckoner": reckoner.key,
        "answers": [
            told(answer, found.answers[answer.key], show)
            for answer in reckoner.answers
            if answer.key in found.answers
        ],
        "working": [{"text": line} for line in force(found.working)],
        "source": reckoner.source,
        "drawing": force(found.drawing),
        "stick": found.stick,
        "tape": _tape(first, found, show),
        "cautions": [*past_the_saw(reckoner, form.given, found), *found.cautions],
        "parts": [part_told(part, show) for part in found.parts],
        "echoes": form.echoes,
        "summary": form.summary,
        "solved": form.solved,
    }
