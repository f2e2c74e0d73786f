"""One entry worked out, whatever it is: with an answer, waiting for another, or refused."""

from fractions import Fraction

from sawside.errors import Refusal, Refusals
from sawside.lengths.reading.names import Named
from sawside.project.evaluation.line_worked import LineWorked
from sawside.project.evaluation.reading_worked import ReadingWorked


class Waiting:
    """An entry whose names have no value: `waits` tells which, as (id or None, name)."""

    ok = False

    def __init__(self, waits, refusal):
        self.waits = waits
        self.refusals = (refusal,)


class Failed:
    """An entry that is refused."""

    ok = False
    waits = ()

    def __init__(self, refusals):
        self.refusals = tuple(refusals)


def worked_out(entry, settings, names, linked, like=None):
    """An entry worked out with `names`; `Failed` for one that is refused."""
    try:
        if entry["kind"] == "reading":
            return ReadingWorked(entry, settings, names)
        return LineWorked(entry, settings, names, linked, like)
    except Refusal as refusal:
        return Failed([refusal.of("text") if entry["kind"] == "reading" else refusal])
    except Refusals as several:
        return Failed(several.refusals)


def moved(worked, by):
    """A reading as if it were longer by so much, in exact inches."""
    value = worked.named("").value + Fraction(by)
    copy = object.__new__(ReadingWorked)
    copy.__dict__.update(worked.__dict__)
    copy._named = Named(value, worked.power)
    return copy
