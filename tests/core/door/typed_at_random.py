"""Texts and values as somebody types them, and as nobody should: for the fuzz of the door.

Everything comes from the chance that is given, so that a seed makes the same again.
"""

import sawside
from tests.core.hostile import NASTY

DESCRIBED = sawside.handle({"do": "describe"})
QUESTIONS = {each["key"]: each for each in DESCRIBED["reckoners"]}
LABELS = DESCRIBED["labels"]

NUMBERS = [
    "31 5/8",
    "7-13/16",
    "37 9/16 in",
    "6' 7 9/32\"",
    "18 mm",
    "917.6 mm",
    "2 ft",
    "3/4",
    "½",
    "0",
    "1",
    "2",
    "3",
    "4",
    "12",
    "22 1/2",
    "45",
    "90",
    "60",
    "-3",
    ".0625",
    "1/3",
    "5 7/12",
    "1/64",
    "999999999999",
    "0.000000000001 in",
    "999999999999/999999999989",
    "5280 ft",
    "1/999999999989",
]
SIGNS = ["+", "-", "−", "×", "*", "·", "x", "÷", "/", " of "]
GROWTH = [
    "{0} × {0} ÷ 1 in",
    "{0} × {0}",
    "{0} × {0} × {0}",
    "{0} ÷ {0}",
    "1 in ÷ {0}",
    "{0} / 3",
    "{0} + 1",
    "1 + {0}",
    "({0} + 1/3) × 2/7",
    "{0} × {0} ÷ {0}",
    "1 in × 1 in ÷ {0}",
]
REPEATED = [" × 999999999999", "÷3", "/3 ", " ÷ 999999999989", "+1/999999999989", "×{0}", " ÷ {0}"]
MOST_TEXT = 200
MOMENTS = [
    "2026-11-30T18:00",
    "2026-12-01T07:30:59",
    "2000-01-01T00:00",
    "2100-12-31T23:59",
    "2026-02-29T12:00",
    "2101-01-01T00:00",
    "2026-11-30",
    "2026-11-30T18:00Z",
    "٢٠٢٦-11-30T18:00",
]
"""As the page gives them, and as none may be."""

SPACES = "\u00a0\u2009\u202f\u2007\t\n"
ODD = SPACES + "\x00\u202e\ud800½⅟³₈′″'\"[]():;,.^%e=@+−÷/⁄µ٣𝟙é日�\u200b\ufeff"
NOT_TEXT = [
    *NASTY,
    10**30,
    1e308,
    float("inf"),
    float("nan"),
    -0.0,
    [None],
    [1, "2"],
    [["3"]],
    {"text": "3"},
    [{"length": 3}],
]


def text(chance, names=()):
    """A length, a sum of what is there, something that grows, or none of these."""
    ways, shares = zip(*_TEXTS.items(), strict=True)
    return chance.choices(ways, shares)[0](chance, names)


def _operand(chance, names):
    return chance.choice(names) if names and chance.random() < 0.5 else chance.choice(NUMBERS)


def _number(chance, names):
    return _operand(chance, names)


def _sum(chance, names):
    made = _operand(chance, names)
    for _ in range(chance.randint(1, 4)):
        made = f"{made} {chance.choice(SIGNS)} {_operand(chance, names)}"
        if chance.random() < 0.2:
            made = f"({made})"
    return made


def _growing(chance, names):
    return chance.choice(GROWTH).format(_operand(chance, names))


def _repeated(chance, names):
    begun, step = _operand(chance, names), chance.choice(REPEATED).format(_operand(chance, names))
    return (begun + step * chance.randint(1, MOST_TEXT // len(step)))[: MOST_TEXT + 1]


def _broken(chance, names):
    made = list(chance.choice((_number, _sum))(chance, names))
    for _ in range(chance.randint(1, 3)):
        at = chance.randrange(len(made) + 1)
        made[at : at + chance.randint(0, 1)] = chance.choice(ODD)
    return "".join(made)


def _other_spaces(chance, names):
    return _sum(chance, names).replace(" ", chance.choice(SPACES))


def _nasty(chance, _names):
    return chance.choice([each for each in NASTY if isinstance(each, str)])


_TEXTS = {_number: 6, _sum: 4, _growing: 3, _repeated: 1, _broken: 3, _other_spaces: 1, _nasty: 1}


def value(chance, field, names=()):
    """What may be sent for a field: mostly of its kind."""
    if chance.random() < 0.04:
        return chance.choice(NOT_TEXT)
    if field["kind"] == "rows":
        return [values_of(chance, field["fields"], names) for _ in range(chance.randint(0, 4))]
    if field["kind"] == "lengths":
        return [text(chance, names) for _ in range(chance.randint(0, 5))]
    if field.get("choices") and chance.random() < 0.9:
        return chance.choice(field["choices"])["value"]
    if field["kind"] == "count" and chance.random() < 0.6:
        return str(chance.randint(0, 70))
    if field["kind"] == "moment" and chance.random() < 0.8:
        return chance.choice(MOMENTS)
    return text(chance, names)


def values_of(chance, fields, names=()):
    """Some of these fields filled in."""
    return {each["key"]: value(chance, each, names) for each in fields if chance.random() < 0.7}


def values(chance, question, names=()):
    """The question's example, in which some fields are left blank or filled in otherwise."""
    made = dict(question["example"])
    for field in chance.choices(question["fields"], k=chance.randint(0, 4)):
        key, way = field["key"], chance.random()
        if way < 0.08:
            made.pop(key, None)
        elif way < 0.3:
            made[key] = value(chance, field, names)
        elif way < 0.6 and names and field["kind"] in SUMS and isinstance(made.get(key), str):
            made[key] = chance.choice(LINKED).format(made[key], chance.choice(names))
    return made


SUMS = ("length", "count", "number")
LINKED = ["{0} + {1} - {1}", "{1} ÷ {1} × {0}", "{0} + {1} ÷ {1} - 1", "{0} × {1} ÷ {1}"]
"""Sums that come to what stood there before, with a name in them."""


def settings(chance):
    """Settings as the page sends them, at times with rows of one's own."""
    made = {}
    for field in DESCRIBED["settings"]:
        if chance.random() < 0.25:
            made[field["key"]] = _setting(chance, field)
    return made


def _setting(chance, field):
    if field["kind"] == "choice":
        return chance.choice(field["choices"])["value"]
    if field["kind"] != "rows":
        return chance.choice(["1/8 in", "1/16", "3 mm", "0", ""])
    own = {"tapes": TAPE, "materials": MATERIAL}[field["key"]]
    return [own | ({"name": text(chance)} if chance.random() < 0.2 else {})]


TAPE = {"name": "Yellow", "block": "1 in", "block_reads": "1 1/64 in"}
MATERIAL = {"name": "Oak, own", "stiffness": "1.8", "tangential": ".003", "radial": ".002"}


def spoiled(chance, message):
    """A message with one place in it that is something else, or gone, or called otherwise."""
    outer, key = chance.choice([*_places(message)])
    if isinstance(outer, dict) and chance.random() < 0.3:
        moved = outer.pop(key)
        if chance.random() < 0.5:
            outer[chance.choice(["__proto__", "", "unit", "text", "x" * 300])] = moved
    else:
        outer[key] = chance.choice(NOT_TEXT)
    return message


def _places(data):
    for key, inside in [*data.items()] if isinstance(data, dict) else enumerate(data):
        yield data, key
        if isinstance(inside, (dict, list)):
            yield from _places(inside)
