"""The name of a file that leaves the program."""

import re
import unicodedata

_OTHER = re.compile(r"[^a-z0-9]+")


def file_name(project, what, ending):
    """A name in plain letters: "record-cabinet-parts.csv"."""
    plain = unicodedata.normalize("NFKD", project).encode("ascii", "ignore").decode().lower()
    return f"{_OTHER.sub('-', plain).strip('-')[:60] or 'project'}-{what}.{ending}"
