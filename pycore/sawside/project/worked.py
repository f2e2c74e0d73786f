"""One entry worked out: its number for other entries, and what is told of it, each made once."""

from fractions import Fraction
from functools import cached_property

from sawside.errors import Refusal, Refusals, quoted
from sawside.lengths.names import Named
from sawside.lengths.reader import read
from sawside.lengths.show import Show
from sawside.reckoning.answers import (
    length_told,
    part_without_drawing,
    refuse_beyond_a_mile,
    told,
)
from sawside.reckoning.links import named
from sawside.reckoning.reading import value_told
from sawside.reckoning.reckon import find, reckoning_told
from sawside.reckoning.values import read_values, reread


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


class ReadingWorked:
    """A reading: its length by the tape that it was read with, or what a sum of names comes to."""

    ok = True
    waits = refusals = ()

    def __init__(self, entry, settings, names):
        self.entry, self.settings, self.names = entry, settings, names
        self.reading = reading = read(entry["text"], settings.unit, names)
        self.read_as, self.power = reading.value, reading.power
        value = self._corrected(reading) if "tape" in entry else reading.value
        self._named = Named(value, reading.power)

    def _corrected(self, reading):
        name = self.entry["tape"]
        tape = next((each for each in self.settings.tapes if each.name == name), None)
        if tape is None:
            raise Refusal(
                "unknown",
                f"There is no tape {quoted(name)} in the settings.",
                "Choose another tape for this reading, or add it in Settings.",
                field="tape",
            )
        if reading.power != 1:
            raise Refusal("conflict", "Only a length is read on a tape.", "Clear the tape.",
                          field="tape")  # fmt: skip
        true = tape.true(reading.value)
        refuse_beyond_a_mile("Length", true)
        return true

    def named(self, label):
        """What its name stands for; it has no other answers."""
        if label:
            raise Refusal("unknown", f"A reading has no {quoted(label)}.", "Use its name alone.")
        return self._named

    @cached_property
    def headline(self):
        """The reading as a VALUE, corrected by its tape."""
        show = Show(self.settings)
        if "tape" not in self.entry:
            return value_told(self.reading, show)
        return length_told("value", "Length", self._named.value, show)

    @property
    def summary(self):
        """How the text was understood, and what was read of a tape that errs."""
        echo = self.reading.echo
        return f"{echo} by {self.entry['tape']}, corrected" if "tape" in self.entry else echo

    answers = property(lambda self: [self.headline])


class LineWorked:
    """A question answered, as far as was asked."""

    ok = True
    waits = refusals = ()

    def __init__(self, entry, settings, names, linked, like=None):
        """`linked` are its fields with names; `like` the same line with other numbers for them."""
        self.entry, self.settings = entry, settings
        self.reckoner = find(entry["reckoner"]) if like is None else like.reckoner
        values = entry["values"]
        if like is None:
            self.form = read_values(self.reckoner, values, settings, names)
            self.show = Show(settings)
        else:
            self.form = reread(self.reckoner, like.form, values, settings, names, linked)
            self.show = like.show
        self.found = self.reckoner.compute(self.form.given, self.show)
        self._named = {}
        first = self.reckoner.answers[0]
        value = self.found.answers[first.key]
        if first.kind == "length":
            refuse_beyond_a_mile(first.label, value)
        for part in self.found.parts:
            if part.length is not value:
                refuse_beyond_a_mile(part.name, part.length)

    def named(self, label):
        """What its name with this label of an answer stands for."""
        held = self._named.get(label)
        if held is None:
            held = self._named[label] = named(self.reckoner, self.found, label)
        return held

    @cached_property
    def headline(self):
        """Its first answer as a VALUE."""
        answer = self.reckoner.answers[0]
        return told(answer, self.found.answers[answer.key], self.show)

    @property
    def summary(self):
        """What was filled in."""
        return self.form.summary

    @cached_property
    def answers(self):
        """Every answer as a VALUE, the first one first."""
        return [
            told(answer, self.found.answers[answer.key], self.show)
            for answer in self.reckoner.answers
            if answer.key in self.found.answers
        ]

    @cached_property
    def parts(self):
        """Every part as the contract's PART, without its drawing."""
        return [part_without_drawing(part, self.show) for part in self.found.parts]

    @cached_property
    def whole(self):
        """Everything, as `reckon` answers."""
        return reckoning_told(self.reckoner, self.form, self.found, self.show)


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
