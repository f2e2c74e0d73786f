"""A line worked out: its numbers for other entries, and what is told of it, each made once."""

from functools import cached_property

from sawside.drawing.lazy import force
from sawside.lengths.show import Show, angle_text
from sawside.project.kinds.step_done import read_done
from sawside.reckoning.answers import refuse_beyond_a_mile, sizes_told, told
from sawside.reckoning.links import named
from sawside.reckoning.main_answer import answers_of
from sawside.reckoning.reckon import find, reckoning_told
from sawside.reckoning.values import read_values, reread
from sawside.wood.weights import weight_text


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
        else:
            self.form = reread(self.reckoner, like.form, values, settings, names, linked)
        self.show = Show(settings, self.form.lengths(self.reckoner))
        self.found = self.reckoner.reckoned(self.form.given, self.show, read_done(entry))
        self._named, self._briefs = {}, {}
        self.main, *self.others = answers_of(self.reckoner, self.found)
        value = self.found.answers[self.main.key]
        if self.main.kind == "length":
            refuse_beyond_a_mile(self.main.label, value)
        for part in self.found.parts:
            if part.length is not value:
                refuse_beyond_a_mile(part.name, part.length)

    def named(self, label):
        """What its name with this label of an answer stands for."""
        held = self._named.get(label)
        if held is None:
            held = self._named[label] = named(self.reckoner, self.found, label)
        return held

    def brief(self, answer):
        """One of its answers in a few words; "none" where this case does not have it."""
        held = self._briefs.get(answer.key)
        if held is None:
            held = self._briefs[answer.key] = self._in_brief(answer)
        return held

    def _in_brief(self, answer):
        value = self.found.answers.get(answer.key)
        if value is None:
            return "none"
        if answer.kind == "length":
            return self.show.brief(value, answer.rounding)
        if answer.kind == "lengths":
            return ", ".join(self.show.brief(each, answer.rounding) for _, each in value)
        if answer.kind == "weight":
            return weight_text(value, self.show)
        return angle_text(value) if answer.kind == "angle" else str(force(value))

    @cached_property
    def headline(self):
        """Its main answer as a VALUE."""
        return told(self.main, self.found.answers[self.main.key], self.show)

    @property
    def summary(self):
        """What was filled in."""
        return self.form.summary

    @cached_property
    def answers(self):
        """Every answer as a VALUE, the main one first."""
        return [
            told(answer, self.found.answers[answer.key], self.show)
            for answer in (self.main, *self.others)
        ]

    @cached_property
    def parts(self):
        """Every part with its sizes and ends."""
        return [sizes_told(part, self.show) for part in self.found.parts]

    @cached_property
    def whole(self):
        """Everything, as `reckon` answers."""
        return reckoning_told(self.reckoner, self.form, self.found, self.show)
