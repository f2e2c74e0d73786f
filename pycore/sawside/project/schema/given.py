"""The checks (`needs.py`) of what messages and acts about a project are given."""

from sawside.errors import Refusal
from sawside.needs import an_object, index, some, text
from sawside.project.kinds.checks import moment_given, short_sum
from sawside.project.kinds.entries import read_entry
from sawside.project.kinds.entry_parts import MOST_PIECES, READING_DETAILS, read_values_kept
from sawside.project.schema.document import MOST_ENTRIES, read_document
from sawside.project.schema.migrate import migrated_entry
from sawside.project.schema.plan_kept import read_plan
from sawside.reckoning.reckon import find


def document(value, _place):
    """A project, in this schema; its own refusals name the place in it."""
    return read_document(value)


def reckoner(value, place):
    """A question by its key."""
    return find(text(value, place))


def kept_entry(value, place):
    """An entry as it was kept, by an older schema too."""
    return read_entry(migrated_entry(value), place)


def plan(value, place):
    """A cutting plan as it is kept."""
    return read_plan(an_object(value, place), place)


entries = some(MOST_ENTRIES, read_entry)
places = some(MOST_PIECES, index)


def values(value, place):
    """What was typed in the fields of a question, as a line keeps it."""
    for field, typed in an_object(value, place).items():
        if isinstance(typed, str):
            short_sum(typed, str(field))
    return read_values_kept(value)


def _detail(check):
    def told(value, place):
        try:
            return value and check(value, place).strip()
        except Refusal:
            message = f"This can’t be saved as “{place}” for a reading."
            raise Refusal(
                "unreadable", message, "Shorten it, or choose another.", field=place
            ) from None

    return told


DETAILS = {key: _detail(check) for key, check in READING_DETAILS.items()} | {"when": moment_given}
"""What may be told of a reading beside its text; "" takes it away."""
