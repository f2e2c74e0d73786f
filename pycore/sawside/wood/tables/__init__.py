"""Reading the tables of this folder: every row keeps its source, its place there and its status.

`page` is counted from the order of the pages in the copy that was read, and blank where the row's
page was not seen. `status` says how the row is known: read in the source, read in somebody's copy,
worked out, common practice, or from memory.
"""

import csv
from dataclasses import dataclass
from fractions import Fraction
from pkgutil import get_data


def rows(name):
    """The rows of a table as dicts of text, in the order of the file."""
    return list(csv.DictReader(get_data(__package__, name).decode("utf-8").splitlines()))


def cited(row):
    """Where a row stands and how it is known, as one line of text for the screen."""
    page = f"page {row['page']}" if row.get("page") else ""
    place = (row["source"], row.get("edition"), row.get("table") or row.get("clause"), page)
    where = ", ".join(each for each in place if each)
    return f"{where}; {row['status']}" if where else row["status"]


def marked(name, status):
    """A name as a list shows it: what is known only from memory says so there too."""
    return f"{name} (from memory)" if "from memory" in status else name


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
