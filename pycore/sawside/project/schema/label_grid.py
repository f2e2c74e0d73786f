"""The grid of a sheet of stickers: what is set of it, and how a project keeps it: as typed."""

from sawside.lengths.reading.refusals import MOST_CHARACTERS
from sawside.project.kinds.checks import keys_checked, unit_checked, words_checked
from sawside.reckoners.fields import choice, count, length


def _margin(key, label, default='3/8"', metric="10 mm", help_=""):
    return length(key, label, default=default, metric=metric, most="6 in", help=help_)


FIELDS = (
    count("columns", "Labels across", default="3", least="1", most="10"),
    count("rows", "Labels down", default="8", least="1", most="30"),
    _margin(
        "top", "Top margin", help_=("From the edge of the paper to the first label. Measure it.")
    ),
    _margin("bottom", "Bottom margin"),
    _margin("left", "Left margin"),
    _margin("right", "Right margin"),
    _margin("across_gap", "Gap between columns", "0", None),
    _margin("up_gap", "Gap between rows", "0", None),
    count(
        "first",
        "First free label",
        default="1",
        least="1",
        most="300",
        help="For a sheet that’s partly used. Count left to right, top to bottom.",
    ),
    choice(
        "outline",
        "Outlines",
        {"no": "None", "yes": "Thin lines"},
        help="Thin lines to cut along, for plain paper.",
    ),
)
"""What is set of a sheet of stickers. The defaults are nobody's sheet: measure your own."""


def read_grid(data):
    """A checked copy of {"unit", "values": {field: text}}; what is blank is left out.

    A text may be one that can't be read: it was typed all the same. Refusals: "message".
    """
    keys_checked(data, "labels", ("unit", "values"))
    keys_checked(data["values"], "labels.values", (), [field.key for field in FIELDS])
    texts = {
        key: words_checked(text, f"labels.values.{key}", MOST_CHARACTERS)
        for key, text in data["values"].items()
    }
    return {
        "unit": unit_checked(data["unit"], "labels.unit"),
        "values": {key: text for key, text in texts.items() if text},
    }
