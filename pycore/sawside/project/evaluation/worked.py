"""One entry worked out, whatever it is: with an answer, waiting for another, or refused."""

from fractions import Fraction

from sawside.errors import Refusal, Refusals, each_of
from sawside.lengths.reading.names import Named
from sawside.project.kinds.entries import kind_of
from sawside.project.kinds.reading_worked import ReadingWorked


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
        return kind_of(entry).work(entry, settings, names, linked, like)
    except (Refusal, Refusals) as fault:
        return Failed(each_of(fault))


def moved(worked, by):
    """A reading as if it were longer by so much, in exact inches."""
    value = worked.named("").value + Fraction(by)
    copy = object.__new__(ReadingWorked)
    copy.__dict__.update(worked.__dict__)
    copy._named = Named(value, worked.power)
    return copy
