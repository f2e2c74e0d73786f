"""A length that is set once for a whole project: a question that leaves it blank takes it."""

from dataclasses import dataclass

from sawside.errors import Refusal
from sawside.lengths.reading.reader import read_length
from sawside.lengths.units import METRIC


@dataclass(frozen=True, slots=True)
class SetLength:
    """One such length under the `key` of its setting.

    `default` is in inches as a bare number, "" where there is none; `metric` is that of a metric
    project with its unit, where it is another; `least` and `most` are inclusive and name their
    unit.
    """

    key: str
    label: str
    help: str
    default: str
    least: str
    most: str
    metric: str = ""

    def typed(self, value):
        """What a message sends, as text; "message" for what is none."""
        if isinstance(value, bool) or not isinstance(value, (str, int, float)):
            raise Refusal(
                "message",
                f"{self.label} is not a text.",
                "Send it as it was typed.",
                field=f"settings.{self.key}",
            )
        return str(value).strip()

    def meant(self, typed, unit):
        """The text that holds: what was typed in `unit`, or the default."""
        return typed or self.usual(unit)

    def usual(self, unit):
        """The default where a bare number is in `unit`."""
        return self.default if unit == "in" else self.usual_named(unit)

    def usual_named(self, unit):
        """The same with its unit beside it."""
        if not self.default:
            return ""
        return self.metric if self.metric and unit in METRIC else f"{self.default} in"

    def read(self, text, unit):
        """Exact inches, None for "" where there is no default; refuses whatever the reader does,
        and "range"."""
        if not text:
            return None
        try:
            value = read_length(text, unit).value
            if not read_length(self.least).value <= value <= read_length(self.most).value:
                raise Refusal(
                    "range",
                    f"{self.label} must be from {self.least} to {self.most}.",
                    "Check the number and add its unit.",
                    at=0,
                )
        except Refusal as refusal:
            raise refusal.of(f"settings.{self.key}") from None
        return value
