"""The messages about the tally of the pad: changed by an act and told, and what is kept of it."""

from sawside.errors import Refusal, message_fault, quoted
from sawside.needs import Message, an_object, checked, text
from sawside.project.kinds.checks import MOST_NAME, Damaged
from sawside.project.schema.given import document
from sawside.settings.settings import settings_sent
from sawside.tally.acts import ACTS
from sawside.tally.document import read_tally
from sawside.tally.lines import opened, worked_out
from sawside.tally.names import up_to_date
from sawside.tally.sum_kept import tally_sum


def tally_told(act=None, **open_):
    """The contract of `tally` (without "ok"): a tally changed by an act (None: only told).

    What is open is as `lines.opened` takes it. Names of the project that were changed are followed.
    Refusals: "message" for an act that is none, "unknown" for a line that is not there, "missing"
    where there is nothing to repeat, and those of reading what is entered.
    """
    tally, around = opened(**open_)
    undo = None
    if act is not None:
        tally, undo = _changed(tally, act, around)
        tally = up_to_date(tally, around.project)
    return {"tally": tally, "undo": undo, "lines": worked_out(tally, around)[0]}


def _changed(tally, act, around):
    """(the tally after an act, what undoes it): one that can be opened again."""
    kind = ACTS[act["act"]]
    try:
        tally, undo = kind.make(tally, around, **checked(act, kind))
        return read_tally(tally), undo
    except Damaged as fault:
        raise (fault if kind.brings_back else fault.as_typed()) from None


def _an_act(value, place):
    """An act by its name; its other keys are checked when it is made."""
    name = an_object(value, place).get("act")
    if not isinstance(name, str) or name not in ACTS:
        raise Refusal(
            "message",
            f"There is no act {quoted(str(name))}.",
            f"Send one of {', '.join(ACTS)}.",
            field=place,
        )
    return value


def _tally(value, _place):
    return read_tally(value)


def _short_text(value, place):
    if len(text(value, place)) > MOST_NAME or not value.isprintable():
        raise message_fault(place, f"a text of at most {MOST_NAME} characters that can be shown")
    return value


_OPEN = {"tally": _tally, "settings": settings_sent, "document": document, "project": _short_text}
MESSAGES = {
    "tally": Message(tally_told, may=_OPEN | {"act": _an_act}),
    "tally_sum": Message(tally_sum, may=_OPEN | {"id": text, "text": text}),
}
