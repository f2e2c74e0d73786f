"""Telling answers and parts as data, by their kind."""

from fractions import Fraction
from functools import lru_cache

from sawside.drawing.lazy import force
from sawside.errors import Refusal
from sawside.lengths.display import MINUS, decimal_text, is_written, length_value, rational_text
from sawside.lengths.marks import exact_of
from sawside.lengths.real import Real, settle, sign
from sawside.lengths.show import Show, angle_text
from sawside.lengths.units import MILE
from sawside.lengths.words import decimal_in_words, whole_in_words
from sawside.reckoning.past_the_saw import step_past
from sawside.wood.weights import weight_text


def told(answer, value, show):
    """One answer as the contract's VALUE; `value` is as `Answer` describes for its kind."""
    rounding = () if answer.must is None else (answer.rounding,)
    return _TOLD[answer.kind](answer.key, answer.label, value, show, *rounding)


def length_told(key, label, value, show, must=None):
    """A length (exact inches, or already on its mark) as a VALUE; "range" beyond a mile.

    `must` is a key of `marks.MUSTS`, or None where the person's own rounding will do.
    """
    if isinstance(value, Fraction) and not show.as_given(value):
        refuse_beyond_a_mile(label, value)
        return {"key": key, "label": label} | _rational_told(value, show.settings, must)
    rounded = show.rounded(value, must)
    refuse_beyond_a_mile(label, rounded.mark)
    return length_value(key, label, rounded, show.settings.display)


@lru_cache(maxsize=2048)
def _rational_told(value, settings, must):
    """A VALUE without its key and label: many pieces of a project have one width, or one length."""
    told = length_value(None, None, Show(settings).rounded(value, must), settings.display)
    del told["key"], told["label"]
    return told


_MILE = int(MILE)


def refuse_beyond_a_mile(label, value):
    """Refuse a length ("range") that nobody means."""
    value = exact_of(value)
    if isinstance(value, Real):
        beyond = abs(value) > MILE
    else:  # quicker than comparing fractions
        beyond = abs(value.numerator) > _MILE * value.denominator
    if beyond:
        raise Refusal(
            "range", f"{label} is more than a mile long.", "Check the numbers and their units."
        )


def count_told(key, label, value, _show):
    """A whole number as a VALUE."""
    text, words = str(abs(value)), whole_in_words(abs(value))
    if value < 0:
        text, words = f"{MINUS}{text}", f"minus {words}"
    return {"key": key, "label": label, "kind": "count", "text": text, "words": words}


def _lengths_told(key, label, values, show, must):
    items = [
        length_told(f"{key}.{number}", each, value, show, must)
        for number, (each, value) in enumerate(values, 1)
    ]
    text, brief = (", ".join(item[each] for item in items) for each in ("text", "brief"))
    told = {"key": key, "label": label, "kind": "lengths", "text": text, "brief": brief}
    return told | {"items": items}


def _angle_told(key, label, degrees, _show):
    """An angle to a hundredth of a degree; an irrational one has no exact text.

    How far it is off is said of a small one, such as an error: no saw shows it of another.
    """
    text = angle_text(degrees)
    return {
        "key": key,
        "label": label,
        "kind": "angle",
        "exact": rational_text(degrees) if is_written(degrees) else None,
        "text": text,
        "words": f"{_in_words(_number_of(text))} degrees",
        "dropped_text": _angle_off(degrees, text) if abs(degrees) < 1 else "",
    }


def _number_of(text):
    return text.removeprefix("≈ ").removesuffix("°")


def _in_words(number):
    words = decimal_in_words(number.removeprefix(MINUS))
    return f"minus {words}" if number.startswith(MINUS) else words


def _angle_off(degrees, text):
    """How far the angle that was told is from the angle: "0.043° over", or "".

    A negative one, a difference, is over where it was told as more of a difference than it is.
    """
    off = abs(Fraction(_number_of(text).replace(MINUS, "-"))) - abs(degrees)
    way = sign(off)
    thousandths, _ = settle(abs(off) * 1000, round)
    size = decimal_text(Fraction(thousandths, 1000), 3) if thousandths else "less than 0.001"
    return f"{size}° {'over' if way > 0 else 'short'}" if way else ""


def _weight_told(key, label, pounds, show):
    """A weight as a VALUE, in both systems or in kilograms alone."""
    text = weight_text(pounds, show)
    return {"key": key, "label": label, "kind": "weight", "text": text, "words": text}


def _text_told(key, label, text, _show):
    return {"key": key, "label": label, "kind": "text", "text": force(text)}


_TOLD = {
    "length": length_told,
    "lengths": _lengths_told,
    "count": count_told,
    "angle": _angle_told,
    "weight": _weight_told,
    "text": _text_told,
}


def part_told(part, show):
    """A part as the contract's PART; every measure comes with its mark."""
    data = sizes_told(part, show)
    for key, label in (("long_side", "Long point"), ("short_side", "Short point")):
        if (value := getattr(part, key)) is not None:
            data[key] = length_told(key, label, value, show)
    return data | {"drawing": force(part.drawing)}


def _steps(end):
    past = step_past(end)
    return [*end.at_the_saw, past] if past else end.at_the_saw


def sizes_told(part, show):
    """What a list of pieces has of a part: count, sizes, ends, and what else is said of it."""
    data = {"key": part.key, "name": part.name, "count": part.count}
    for key, label in (("length", "Length"), ("width", "Width"), ("thickness", "Thickness")):
        value = getattr(part, key)
        data[key] = None if value is None else length_told(key, label, value, show)
    data["ends"] = {
        side: {"cut": end.cut, "angle": end.angle, "at_the_saw": _steps(end)}
        for side, end in (("left", part.left), ("right", part.right))
    }
    return data | ({"about": list(part.about)} if part.about else {})
