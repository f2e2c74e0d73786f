"""Backups and tables gone wrong in every way, and what must hold of the answer to each.

Used by the tests with some hundreds of them, by the bench with ten thousand.
"""

import json
import random

import sawside
from tests.core.projects import acts, answered, linked

KINDS = {"message", "newer", "unknown", "missing", "unreadable", "range", "impossible", "conflict"}
SCRIPT = '<script>alert(1)</script><img src=x onerror="alert(2)">'
WHEN = "2026-11-25T17:20"
NASTY = [
    None,
    True,
    False,
    0,
    -1,
    3.5,
    10**14,
    "",
    "x" * 5000,
    SCRIPT,
    "__proto__",
    "\x00",
    "\u202e",
    [],
    {},
    [[]],
    {"__proto__": {"polluted": "yes"}},
    {"constructor": "x"},
    "=1+1",
    "'",
    "\r\n",
]


PLAN = {
    "kerf": "1/8 in",
    "boards": [
        {
            "key": "1",
            "form": "board",
            "length": "96 in",
            "width": "9/4 in",
            "thickness": "3/4 in",
            "material": "Birch",
            "name": "by the door",
            "price": "25/2",
            "from": "1:1",
            "trim": "1/2 in",
            "flaws": [{"start": "90 in", "end": "92 in"}],
            "bought": True,
            "cuts": [
                {"way": "crosscut", "part": 0, "at": "3/8 in", "trim": True},
                {"way": "crosscut", "part": 2, "at": "30 in"},
            ],
            "pieces": [{"entry": "7", "part": "piece", "of": 3}],
        },
        {
            "key": "2",
            "form": "stick",
            "length": "60 in",
            "cuts": [{"way": "crosscut", "part": 0, "at": "30 in"}],
            "pieces": [{"entry": "3", "part": "piece", "of": 1, "done": True}],
        },
    ],
    "begun": [{"entry": "3", "part": "piece", "cut": 1, "spoiled": 0}],
    "checked": [{"boards": ["1"], "over": "5/2", "priced": True}],
}


def project():
    """A project with something of everything that can be kept."""
    return acts(
        linked(),
        (
            "describe",
            {"id": "1", "where": "at the floor", "side": "light", "off": "1/16", "photo": "p1"},
        ),
        ("correct", {"id": "1", "text": "37 1/2", "when": WHEN}),
        ("tolerance", {"text": "1/32"}),
        ("labels", {"values": {"columns": "2", "top": "1/2", "outline": "yes"}}),
        ("keep_note", {"text": "Glue up on Friday.\nThen sand."}),
        ("cut", {"id": "3", "part": "piece", "by": 1, "when": WHEN}),
        ("spoil", {"id": "4", "part": "piece"}),
        ("trial", {"id": "3", "part": "piece", "measured": "37 9/32"}),
        (
            "about",
            {"id": "3", "part": "piece", "about": {"material": "Birch", "rough_length": "1"}},
        ),
        (
            "keep_line",
            {
                "name": "=Shelf",
                "reckoner": "piece_by_hand",
                "values": {"length": "30", "count": "3", "width": "[Top rail] ÷ 4"},
            },
        ),
        ("keep_line", {"reckoner": "coats", "values": {"start": "2026-11-30T18:00"}}),
        (
            "tick",
            {"id": "7", "step": "coat1", "done_at": "2026-11-30T19:05", "temperature": "64"}
            | {"humidity": "45", "note": "Sapwood drank it", "photo": "p1"},
        ),
        ("keep_plan", {"plan": PLAN}),
    )


def backup_text(document):
    """The text of a backup with a picture."""
    photos = {"p1": "data:image/jpeg;base64,AAAA"}
    return answered("backup", document, when=WHEN, photos=photos)["text"]


def files(document):
    """(message without its text, the text) of every file that the program writes and reads."""
    yield {"do": "restore"}, backup_text(document)
    yield {"do": "merge", "document": document}, backup_text(document)
    for what in ("parts", "readings", "cuts", "stock"):
        text = answered("csv", document, what=what)["text"]
        yield {"do": "take_csv", "document": document, "what": what}, text


def faults(message, text):
    """What is wrong with the answer to a file: ended in a bug, took in a part, or named nothing."""
    answer = sawside.handle_json(json.dumps(message | {"text": text}))
    answer.encode()
    said = json.loads(answer)
    if not said["ok"]:
        error = said["error"]
        if error["kind"] not in KINDS:
            yield f"ended as {error['kind']}: {error['remedy']}"
        if "document" in said:
            yield "refused, and took in a part"
        if not error["message"] or not error["field"]:
            yield f"names no place: {error}"
        return
    for more in ({"do": "view"}, {"do": "csv", "what": "parts"}, {"do": "backup", "when": WHEN}):
        seen = json.loads(sawside.handle_json(json.dumps(more | {"document": said["document"]})))
        if not seen["ok"]:
            yield f"was let in, and then {more['do']} said {seen['error']}"


def mutant(text, chance):
    """A text gone wrong in one way or another."""
    return chance.choice(_WAYS)(text, chance)


def _flipped(text, chance):
    data = bytearray(text.encode())
    for _ in range(chance.randint(1, 4)):
        data[chance.randrange(len(data))] ^= 1 << chance.randrange(8)
    return data.decode(errors="replace")


def _cut_off(text, chance):
    return text[: chance.randrange(len(text))]


def _torn(text, chance):
    one, other = sorted(chance.randrange(len(text)) for _ in range(2))
    return text[:one] + text[other:]


def _doubled(text, chance):
    one, other = sorted(chance.randrange(len(text)) for _ in range(2))
    return text[:other] + text[one:]


def _sprinkled(text, chance):
    at = chance.randrange(len(text))
    bits = [
        '"',
        "\\",
        "\\ud800",
        "\x00",
        ",",
        "{",
        "[",
        "]",
        "}",
        "\n",
        "'",
        "=",
        "1e999",
        "NaN",
        "9" * 400,
        SCRIPT,
    ]
    return text[:at] + chance.choice(bits) + text[at:]


def _bomb(text, chance):
    depth = chance.choice([20, 2000, 100_000])
    opened, closed = chance.choice([("[", "]"), ('{"a":', "}")])
    inside = chance.choice(["", text])
    return opened * depth + (inside or "1") + closed * depth


def _other_value(text, chance):
    """A good text in which one value, or one key, is something else; some keys stand twice."""
    try:
        data = json.loads(text)
    except ValueError:
        return _cell(text, chance)
    places = [*_places(data)]
    inner, key = chance.choice(places)
    if isinstance(inner, dict) and chance.random() < 0.3:
        name = chance.choice(["__proto__", "constructor", SCRIPT, "x" * 300, "unit", ""])
        inner[name] = inner.pop(key)
    else:
        inner[key] = chance.choice(NASTY)
    written = json.dumps(data)
    if chance.random() < 0.2:
        written = written.replace('"name"', '"id": "7", "name"', 1)
    return written


def _cell(text, chance):
    rows = text.split("\r\n")
    at = chance.randrange(len(rows))
    cells = rows[at].split(",")
    cells[chance.randrange(len(cells))] = str(chance.choice(NASTY))
    rows[at] = ",".join(cells)
    return "\r\n".join(rows)


def _places(data):
    for key, value in data.items() if isinstance(data, dict) else enumerate(data):
        yield data, key
        if isinstance(value, (dict, list)):
            yield from _places(value)


_WAYS = [_flipped, _cut_off, _torn, _doubled, _sprinkled, _bomb, *[_other_value] * 4]


def crashes(count, seed):
    """[(message, what was wrong)] of so many files gone wrong."""
    chance = random.Random(seed)
    good = [*files(project())]
    found = []
    for _ in range(count):
        message, text = chance.choice(good)
        wrong = [*faults(message, mutant(text, chance))]
        found += [(message["do"], each) for each in wrong]
    return found
