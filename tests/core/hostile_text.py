"""Text that a person, a keyboard or a file may bring into any act, and where acts have text."""

import copy

from hostile import SCRIPT, project
from hypothesis import strategies as st
from projects import acts

SPACES = "".join(filter(str.isspace, map(chr, range(1, 0x3001)))).replace(" ", "")
ODD = st.sampled_from(
    [
        "\u200b",
        "\u200e",
        "\u202e",
        "\ufeff",
        "\x00",
        "\x7f",
        "\ud83d",
        "\udfff",
        "\U0010ffff",
        "🪵",
        "é",
        "Wood for it ",
        "e\u0301",
        "٣",
        "【",
        SCRIPT,
        "[",
        "]",
        ":",
        "'",
        '"',
        "=",
        "\\",
        "x" * 90,
        "9" * 30,
    ]
)
FIXED = (
    "act",
    "id",
    "kind",
    "reckoner",
    "part",
    "step",
    "done_at",
    "cut",
    "unit",
    "side",
    "when",
    "photo",
    "by",
    "fineness",
    "left_end",
    "right_end",
)
"""What no person types: what an act calls things by."""

OWN = {
    "tapes": [{"name": "Old tape", "case": "3 1/4 in", "block": "1 1/2", "block_reads": "1 33/64"}],
    "materials": [{"name": "Plum wood", "stiffness": "1 1/2", "note": "by the yard"}],
}
DOCUMENT = acts(
    project(), ("set", {"settings": OWN}), ("keep_note", {"text": "x"}), ("delete", {"id": "8"})
)


def texts(value, path=()):
    """(path, text) of every text in an act that a person types."""
    if isinstance(value, str):
        yield path, value
    elif isinstance(value, (dict, list)):
        for key, inner in value.items() if isinstance(value, dict) else enumerate(value):
            if key not in FIXED:
                yield from texts(inner, (*path, key))


def with_texts(value, new):
    """The same act with some texts instead, by their paths."""
    value = copy.deepcopy(value)
    for path, text in new.items():
        inner = value
        for key in path[:-1]:
            inner = inner[key]
        inner[path[-1]] = text
    return value


def plain(value):
    """Data with plain spaces in all of its texts."""
    if isinstance(value, dict):
        return {key: plain(inner) for key, inner in value.items()}
    if isinstance(value, list):
        return [plain(inner) for inner in value]
    return "".join(" " if c.isspace() else c for c in value) if isinstance(value, str) else value


def respaced(text, draw):
    return "".join(draw(st.sampled_from(SPACES)) if each == " " else each for each in text)


HOSTILE = st.lists(ODD | st.sampled_from(SPACES) | st.text(max_size=4), max_size=4).map("".join)


@st.composite
def hostile_texts(draw, act):
    """{path: text}: something odd in one or two texts of an act, or in their place."""
    new = {}
    if all_ := [*texts(act)]:
        for path, text in draw(st.lists(st.sampled_from(all_), min_size=1, max_size=2)):
            at, odd = draw(st.integers(0, len(text))), draw(HOSTILE)
            new[path] = draw(st.sampled_from([odd, text[:at] + odd + text[at:]]))
    return new
