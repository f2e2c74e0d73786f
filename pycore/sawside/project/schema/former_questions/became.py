"""What a question became part of, and how what was filled in is asked there."""

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

_BY_PART = ("cut", "spoiled", "trials", "about")
"""The keys of a line whose values are by the key of a part."""


@dataclass(frozen=True, slots=True)
class Became:
    """`question` asks the same when `values` are filled in and `fields` have their new keys.

    `blank` is what a field (by its new key) was where it was left blank, if that is another one
    there; `parts` are new keys of its pieces. `more(values)` changes what none of that can say; it
    is given the new values, unchecked.
    """

    question: str
    values: dict[str, Any] = field(default_factory=dict)
    fields: dict[str, str] = field(default_factory=dict)
    blank: dict[str, Any] = field(default_factory=dict)
    parts: dict[str, str] = field(default_factory=dict)
    more: Callable[[dict[str, Any]], dict[str, Any]] = dict

    def brought_up(self, entry):
        """A line that asks this question; what has not the shape of one is left for the check."""
        values = entry.get("values")
        if not isinstance(values, dict):
            return entry
        named = {self.fields.get(key, key): value for key, value in values.items()}
        missing = {key: text for key, text in self.blank.items() if named.get(key) in (None, "")}
        parts = {key: self._by_part(entry[key]) for key in _BY_PART if key in entry}
        values = self.more(named | missing | self.values)
        return entry | {"reckoner": self.question, "values": values} | parts

    def _by_part(self, kept):
        if not isinstance(kept, dict):
            return kept
        return {self.parts.get(key, key): value for key, value in kept.items()}
