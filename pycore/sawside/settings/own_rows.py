"""What is the person's own and stands in the settings by rows: tapes, materials. One name each.

A row comes from a message as {part: text}; it is kept as a tuple of texts that can be hashed.
"""

from dataclasses import dataclass

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.scanner import plain_spaces

MOST_OWN_NAME = 40


@dataclass(frozen=True, slots=True)
class RowKind:
    """One kind of row: the setting's key, what one is called, and its parts with their labels."""

    key: str
    one: str
    labels: dict[str, str]

    @property
    def field(self):
        """The field that a refusal names."""
        return f"settings.{self.key}"

    def refusal(self, kind, message, remedy, row, part=None, at=None):
        """A refusal that names the row (from 0) and its part."""
        message = f"{self.one.capitalize()} {row + 1}: {message}"
        return Refusal(kind, message, remedy, field=self.field, row=row, part=part, at=at)

    def rows_typed(self, rows, most):
        """The rows of a message as texts; "message", "range" and "unknown" for what is none."""
        if not isinstance(rows, list):
            message = f"My {self.key} are not a list."
            raise Refusal("message", message, "Send them as a list.", field=self.field)
        if len(rows) > most:
            message = f"There are more than {most} {self.key}."
            raise Refusal("range", message, "Remove some.", field=self.field)
        return tuple(self.texts(number, row) for number, row in enumerate(rows))

    def texts(self, number, row):
        """A row as one text for each part; None for a row with nothing in it."""
        if not isinstance(row, dict):
            message = f"this is no {self.one}."
            raise self.refusal("message", message, "Send its parts by name.", number)
        for part, value in row.items():
            if part not in self.labels:
                message = f"a {self.one} has no {quoted(str(part))}."
                raise self.refusal("unknown", message, "Remove it.", number)
            if isinstance(value, bool) or not isinstance(value, (str, int, float)):
                message = f"{self.labels[part]} is not a text."
                raise self.refusal("message", message, "Send it as it was typed.", number, part)
        texts = tuple(plain_spaces(str(row.get(part, ""))).strip() for part in self.labels)
        return texts if any(texts) else None

    def name_faults(self, number, name, taken):
        """What is wrong with a row's name; `taken` are the folded names of those above it."""
        one = self.one
        if not name:
            remedy = f"Give the {one} a name."
            yield self.refusal("missing", "Name is blank.", remedy, number, "name")
        elif name.casefold() in taken:
            message = f"there’s already a {one} named {quoted(name)}."
            yield self.refusal("conflict", message, "Give it another name.", number, "name")
        if len(name) > MOST_OWN_NAME or not name.isprintable():
            message = f"a name can have at most {MOST_OWN_NAME} characters, all of them visible."
            yield self.refusal("range", message, "Shorten it.", number, "name")

    def read(self, rows, read_one):
        """(what `read_one` makes of each row, all refusals).

        `read_one` takes the row's number and its texts by part, and gives the thing (or None) and
        its refusals.
        """
        made, refusals, taken = [], [], set()
        for number, row in enumerate(rows):
            if row is None:
                continue
            texts = dict(zip(self.labels, row, strict=True))
            wrong = list(self.name_faults(number, texts["name"], taken))
            taken.add(texts["name"].casefold())
            one, more = read_one(number, texts)
            made.append(one)
            refusals += wrong + more
        return tuple(made), refusals
