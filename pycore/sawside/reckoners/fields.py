"""The kinds of things to fill in, as a reckoner declares them (`declaration.py`)."""

from dataclasses import dataclass, replace
from typing import Any

from sawside.lengths.units import METRIC
from sawside.moments import FIRST, LAST
from sawside.settings.clearances import CLEARANCES
from sawside.wood.materials import having


@dataclass(frozen=True, slots=True)
class Choice:
    """One value of a choice, with the words for it; `picture` is a small drawing of it
    (`drawing/choices`), where that tells more than they do."""

    value: str
    label: str
    help: str | None = None
    picture: dict[str, Any] | None = None


@dataclass(frozen=True, slots=True)
class Field:
    """One thing to fill in. `least` and `most` are inclusive, in text as a person would type it.

    `shown_when` is (another field's key, the values of it that show this one), or several such
    pairs that all have to hold. A blank length with a `setting` is that of the settings under this
    key; `choices_from` names a list of the settings, whose names are offered after `choices`.
    `figure` is what is needed of a material.
    `metric` is the default where a bare number is in millimeters, centimeters or meters.
    `in_short` is how it is said in a sentence, "{} left end", whoever filled it in; without it the
    sentence is made of the label, and of what was typed alone (`reckoning/sentence.py`).
    """

    kind: str
    key: str
    label: str
    help: str = ""
    default: str | None = None
    metric: str | None = None
    least: str | None = None
    most: str | None = None
    may_be_blank: bool = False
    blank_means: str | None = None
    choices: tuple[Choice, ...] = ()
    shown_when: tuple[Any, ...] | None = None
    fields: tuple["Field", ...] = ()
    row_label: str | None = None
    most_rows: int | None = None
    unit: str | None = None
    setting: str | None = None
    choices_from: str | None = None
    figure: str | None = None
    in_short: str | None = None

    @property
    def conditions(self):
        """`shown_when` as pairs (key, values) that all have to hold; none where it always shows."""
        shown_when = self.shown_when or ()
        return (shown_when,) if shown_when and isinstance(shown_when[0], str) else shown_when

    def only(self, key, values):
        """The same field, shown only where another one has one of these values as well."""
        return replace(self, shown_when=(*self.conditions, (key, values)))

    def start(self, unit):
        """What holds where nothing is typed and a bare number is in `unit`; None for a blank."""
        return self.metric if self.metric and unit in METRIC else self.default


def _field(kind, key, label, **more):
    """A field; one that says what it means when blank may be left blank."""
    return Field(kind, key, label, **{"may_be_blank": "blank_means" in more} | more)


def length(key, label, **more):
    """A length: read with every form of the reader, given as exact inches."""
    return _field("length", key, label, **{"least": "0 in", "most": "100 ft"} | more)


def kerf(key="kerf", label="Kerf", **more):
    """The width of a cut; blank, it is the kerf of the settings."""
    more = {"help": "The width of the cut: measure one in scrap.", "most": "1 in"} | more
    blank = "The kerf of the settings."
    return length(key, label, setting="kerf", blank_means=blank, **more)


def clearance(key, label, setting, **more):
    """Room left free in a fit; blank, it is that of the settings (a key of `CLEARANCES`)."""
    blank = f"The clearance of the settings: {CLEARANCES[setting].label}."
    return length(key, label, setting=setting, blank_means=blank, **more)


def own_tape(key, label, **more):
    """One of the person's own tapes of the settings, given as its `OwnTape`; None for none."""
    more |= {"choices_from": "tapes", "blank_means": "A tape that reads true."}
    return _field("tape", key, label, **more)


def angle(key, label, **more):
    """An angle in degrees."""
    return _field("angle", key, label, **{"least": "0", "most": "90"} | more)


def count(key, label, **more):
    """A whole number."""
    return _field("count", key, label, **{"least": "0", "most": "1000"} | more)


def number(key, label, unit, **more):
    """A number with a fixed unit, which is shown behind it; decimal or fraction, given exact."""
    return _field("number", key, label, unit=unit, **{"least": "0"} | more)


def choice(key, label, choices, *, pictures=None, **more):
    """One of `choices`, a dict of value to label; the first is the default. `pictures` are drawings
    of some of them, by value."""
    drawn = pictures or {}
    made = tuple(Choice(value, text, picture=drawn.get(value)) for value, text in choices.items())
    return _field("choice", key, label, choices=made, **{"default": made[0].value} | more)


def material(key, label, *, figure="stiffness", own=False, **more):
    """A panel or species that has a figure on file, given as its `Material`.

    What is known only from memory says so in the list; the answer names every source. Those of
    the settings follow. With `own` the last choice is "own", given as None: the question asks for
    its figures.
    """
    made = tuple(Choice(entry.key, entry.label(figure)) for entry in having(figure))
    made += (Choice("own", "My own, this time only"),) if own else ()
    more |= {"choices": made, "figure": figure, "choices_from": "materials"}
    return _field("material", key, label, **more)


def moment(key, label, **more):
    """A moment of the person's own clock, as a page asks for one; given as a `datetime`."""
    return _field("moment", key, label, **{"least": FIRST, "most": LAST} | more)


def lengths(key, label, *, row_label, most_rows, **more):
    """A list of lengths, at most `most_rows`; `row_label` names one of them."""
    more = {"least": "0 in", "most": "100 ft"} | more
    return _field("lengths", key, label, row_label=row_label, most_rows=most_rows, **more)


def rows(key, label, fields, *, row_label, most_rows, **more):
    """Repeated rows of fields, such as the layers of a molding."""
    more |= {"row_label": row_label, "most_rows": most_rows}
    return _field("rows", key, label, fields=tuple(fields), **more)
