"""Forms filled in at random by a question's declaration: its example, with some fields changed.

Enough of the example stays that most forms are answered; what is changed goes to the ends of what
a field allows, so that many are refused as well.
"""

import sawside

DESCRIBED = {each["key"]: each for each in sawside.handle({"do": "describe"})["reckoners"]}
_FACTORS = (0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 0.97, 1, 1.01, 1.1, 1.4, 2, 3, 8, 40)
_ENDS = ("1/64", "1/32", "1/8", "3/8", "3/4", "1 1/2", "2 7/16", "7 1/3", "12", "35 13/64", "96")


def random_form(randomness, question):
    """The values of a form of a question (its declaration as described)."""
    changed = randomness.choice((0.1, 0.3, 0.6))
    return _changed(randomness, question["fields"], question["example"], changed)


def _changed(randomness, fields, example, part):
    values = {}
    for field in fields:
        typed = example.get(field["key"], "")
        if randomness.random() < part:
            typed = _value(randomness, field, typed or field["default"])
        if typed != "":
            values[field["key"]] = typed
    return values


def _value(randomness, field, usual):
    if field["may_be_blank"] and randomness.random() < 0.3:
        return ""
    return _MADE[field["kind"]](randomness, field, usual)


def _length(randomness, field, usual):
    if usual and randomness.random() < 0.7:
        number = _inches(usual) * randomness.choice(_FACTORS)
        divisions = randomness.choice((8, 16, 32, 64, 1))
        steps = max(round(number * divisions), 1)
        return f"{steps}/{divisions} in" if divisions > 1 else f"{number:.3f} in"
    if randomness.random() < 0.2:
        return f"{randomness.uniform(1, 900):.1f} mm"
    return f"{randomness.choice(_ENDS)} in"


def _inches(text):
    said = sawside.handle({"do": "read", "text": str(text)})
    return float(eval_fraction(said["value"]["exact"])) if said["ok"] else 3.0


def eval_fraction(text):
    """A rational of the door as a float."""
    top, _, bottom = text.partition("/")
    return int(top) / int(bottom or 1)


def _number_in(randomness, field, usual, steps):
    low, high = (float(field[key]) if field[key] else None for key in ("least", "most"))
    if usual and randomness.random() < 0.4:
        return f"{float(_plain(usual)) * randomness.choice(_FACTORS):.6f}"[:12]
    low = 0 if low is None else low
    high = max(50.0, 2 * low) if high is None else high
    return f"{round(randomness.uniform(low, high) * steps) / steps:g}"


def _plain(text):
    try:
        return float(text)
    except ValueError:
        return 1.0


def _angle(randomness, field, usual):
    if randomness.random() < 0.3:
        return randomness.choice(("30", "45", "60", "90", "22.5", "88 1/2", "91.25"))
    return _number_in(randomness, field, None, randomness.choice((1, 2, 10)))


def _number(randomness, field, usual):
    return _number_in(randomness, field, usual, randomness.choice((1, 10, 100)))


def _count(randomness, field, _usual):
    low, high = int(field["least"]), int(field["most"])
    return str(randomness.randint(low, min(high, low + randomness.choice((2, 6, 30)))))


def _choice(randomness, field, _usual):
    return randomness.choice(field["choices"])["value"] if field["choices"] else ""


def _moment(randomness, _field, _usual):
    day = f"20{randomness.randint(0, 99):02}-{randomness.randint(1, 12):02}"
    hour = f"{randomness.randint(1, 28):02}T{randomness.randint(0, 23):02}"
    return f"{day}-{hour}:{randomness.randint(0, 59):02}"


def _lengths(randomness, field, usual):
    known = usual if isinstance(usual, list) and usual else ["10 in"]
    many = randomness.randint(1, min(field["most_rows"], 6))
    return [_length(randomness, field, randomness.choice(known)) for _ in range(many)]


def _rows(randomness, field, usual):
    known = usual if isinstance(usual, list) and usual else [{}]
    many = randomness.randint(1, min(field["most_rows"], 4))
    return [
        _changed(randomness, field["fields"], randomness.choice(known), 0.5) for _ in range(many)
    ]


_MADE = {
    "length": _length,
    "angle": _angle,
    "count": _count,
    "number": _number,
    "choice": _choice,
    "material": _choice,
    "lengths": _lengths,
    "rows": _rows,
    "moment": _moment,
    "text": lambda _randomness, _field, _usual: "words",
}
