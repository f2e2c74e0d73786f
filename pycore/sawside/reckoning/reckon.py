"""Answering one question: values in as they were typed, the whole answer out as data."""

from sawside.drawing.lazy import force
from sawside.errors import Refusal, quoted
from sawside.lengths.show import Show
from sawside.lengths.tape import stretch
from sawside.reckoners import RECKONERS
from sawside.reckoning.answers import part_told, told
from sawside.reckoning.main_answer import answers_of
from sawside.reckoning.past_the_saw import past_the_saw
from sawside.reckoning.steps_told import NO_TICKS, steps_told
from sawside.reckoning.touched_fields import with_fields
from sawside.reckoning.values import read_values
from sawside.wood.caution import Caution


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


def reckon(reckoner, values, settings, names=None, ticks=NO_TICKS):
    """The answer to a reckoner's question, as the contract of `reckon` (without "ok").

    `names` may stand in its texts, `ticks` are of its steps. Raises `Refusals` with one refusal for
    each bad field, or the reckoner's own `Refusal`.
    """
    form = read_values(reckoner, values, settings, names)
    show = Show(settings, form.lengths(reckoner))
    found = reckoner.reckoned(form.given, show, ticks.done, ticks.now)
    return reckoning_told(reckoner, form, found, show, ticks)


def _tape(first, found, show):
    if first.kind != "length":
        return None
    rounded = show.rounded(found.answers[first.key], first.rounding)
    return stretch(rounded, found.tape or show.settings.grid)


def _verdict(declared, answers):
    """The question's own verdict with its numbers; "" where this case lacks one of them."""
    texts = {answer["key"]: answer.get("brief", answer["text"]) for answer in answers}
    try:
        return declared.format_map(texts)
    except KeyError:
        return ""


def _cautions(reckoner, form, found):
    return (*past_the_saw(reckoner, form.given, found), *found.cautions)


def _caution(text):
    told = text if isinstance(text, Caution) else Caution.of(text)
    return {"short": told.short, "full": told.full}


def reckoning_told(reckoner, form, found, show, ticks=NO_TICKS):
    """Everything that was found, as the contract of `reckon`; `ticks` are of its steps."""
    answers = answers_of(reckoner, found)
    all_told = [told(answer, found.answers[answer.key], show) for answer in answers]
    whole = {
        "reckoner": reckoner.key,
        "answers": all_told,
        "verdict": found.verdict or _verdict(reckoner.verdict, all_told),
        "working": [{"text": line} for line in force(found.working)],
        "source": reckoner.source,
        "drawing": with_fields(force(found.drawing), reckoner, form.given, show),
        "stick": found.stick,
        "tape": _tape(answers[0], found, show),
        "fixes": [{"label": label, "field": key} for label, key in found.fixes],
        "cautions": [_caution(each) for each in _cautions(reckoner, form, found)],
        "parts": [part_told(part, show) for part in found.parts],
        "echoes": form.echoes,
        "summary": form.summary,
        "solved": form.solved,
    }
    if found.steps:
        whole["steps"] = steps_told(found.steps, ticks.told, ticks.now)
    return whole
