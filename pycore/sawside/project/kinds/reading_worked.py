"""A reading worked out: its number for other entries, and what is told of it, made once."""

from functools import cached_property

from sawside.errors import Refusal, out_of_range, quoted
from sawside.lengths.reading.names import Named
from sawside.lengths.reading.reader import read, read_length
from sawside.lengths.show import Show
from sawside.reckoning.answers import length_told, refuse_beyond_a_mile
from sawside.reckoning.reading import typed_told
from sawside.reckoning.sentence import called

MOST_OFF = 12
"""Inches: whoever may be off by more has not measured."""


class ReadingWorked:
    """A reading: its length by the tape that it was read with, or what a sum of names comes to."""

    ok = True
    waits = refusals = ()
    reckoner = None

    def __init__(self, entry, settings, names):
        self.entry, self.settings, self.names = entry, settings, names
        self.reading = reading = read(entry["text"], settings.unit, names)
        self.read_as, self.power = reading.value, reading.power
        value = self._corrected(reading) if "tape" in entry else reading.value
        self._named = Named(value, reading.power)
        self.off = self._said_off() if "off" in entry else None

    def _corrected(self, reading):
        name = self.entry["tape"]
        tape = next((each for each in self.settings.tapes if each.name == name), None)
        if tape is None:
            raise Refusal(
                "unknown",
                f"There’s no tape named {quoted(name)} in Settings.",
                "Choose another tape for this reading, or add it in Settings.",
                field="tape",
            )
        if reading.power != 1:
            raise Refusal(
                "conflict", "Only a length can come off a tape.", "Clear the tape.", field="tape"
            )
        true = tape.true(reading.value)
        refuse_beyond_a_mile("Length", true)
        return true

    def _said_off(self):
        """What the person says that it may be off by, in exact inches."""
        if self.power != 1:
            raise Refusal(
                "conflict",
                "Only a length can be off by a length.",
                "Clear that field.",
                field="off",
            )
        try:
            off = read_length(self.entry["off"], self.settings.unit).value
        except Refusal as refusal:
            raise refusal.of("off") from None
        if not 0 <= off <= MOST_OFF:
            raise out_of_range("off", f"A reading can be off by 0 to {MOST_OFF} in.")
        return off

    def named(self, label):
        """What its name stands for; it has no other answers."""
        if label:
            raise Refusal("unknown", f"A reading has no {quoted(label)}.", "Use its name alone.")
        return self._named

    @cached_property
    def headline(self):
        """The reading as a VALUE: as it was typed, or corrected by its tape."""
        show = Show(self.settings)
        if "tape" not in self.entry:
            return typed_told(self.reading, show)
        return length_told("value", "Length", self._named.value, show)

    @property
    def summary(self):
        """How the text was understood, and what was read of a tape that errs."""
        echo = called(self.reading.echo)
        echo = f"{echo[:1].upper()}{echo[1:]}"
        return f"{echo} with {self.entry['tape']}, corrected" if "tape" in self.entry else echo

    answers = property(lambda self: [self.headline])
