"""Reading the tables of this folder: every row keeps its source, its place there and its status.

`page` is counted from the order of the pages in the copy that was read, and blank where the row's
page was not seen. `status` says how the row is known: read in the source, read in somebody's copy,
worked out, common practice, or from memory. `known` says the same to the person at the bench.
"""

import csv
from dataclasses import dataclass
from fractions import Fraction
from pkgutil import get_data
from re import sub


def rows(name):
    """The rows of a table as dicts of text, in the order of the file."""
    return list(csv.DictReader(get_data(__package__, name).decode("utf-8").splitlines()))


_SAID = (
    ("common practice, no source", "shop practice"),
    ("not checked against the source", "unchecked"),
    ("from memory", "unchecked"),
    ("read in a secondary copy", "from a copy"),
    ("read in two secondary copies", "from two copies"),
    ("that was read", "in the book"),
    ("that were read", "in the book"),
    ("radial read, ", ""),
)


def known(status):
    """How a row is known, in the words of the shop; blank where it was read in its source."""
    for ours, said in _SAID:
        status = status.replace(ours, said)
    return sub(r"^read( for wood)?([;,] |$)", "", status)


def noted(cited_as):
    """The note of a citation where a number is told without it: " (unchecked)", or blank."""
    note = next((each for each in ("unchecked", "shop practice") if each in cited_as), "")
    return f" ({note})" if note else ""


def cited(row):
    """Where a row stands and how it is known, as one line of text for the screen."""
    page = f"page {row['page']}" if row.get("page") else ""
    place = (row["source"], row.get("edition"), row.get("table") or row.get("clause"), page)
    where = ", ".join(each for each in place if each)
    return "; ".join(each for each in (where, known(row["status"])) if each)


def marked(name, status):
    """A name as a list shows it: what is known only from memory says so there too."""
    return f"{name} (unchecked)" if "from memory" in status else name


@dataclass(frozen=True, slots=True)
class Entry:
    """A row with one name and one number: a load, a limit, a factor of creep."""

    key: str
    name: str
    number: Fraction
    cited: str
    row: dict


def entries(table, number):
    """The rows of a table by their key; `number` is the column of their number."""
    return {
        row["key"]: Entry(
            row["key"], marked(row["name"], row["status"]), Fraction(row[number]), cited(row), row
        )
        for row in rows(table)
    }
