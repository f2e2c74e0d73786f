"""Telling answers and parts as data, by their kind."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.display import decimal_text, length_value, rational_text
from sawside.lengths.real import Real, sign
from sawside.lengths.show import angle_text
from sawside.lengths.units import MILE
from sawside.lengths.words import decimal_in_words, whole_in_words


def told(answer, value, show):
    """One answer as the contract's VALUE; `value` is as `Answer` describes for its kind."""
    return _TOLD[answer.kind](answer.key, answer.label, value, show)


def length_told(key, label, value, show):
    """A length (exact inches, or already on its mark) as a VALUE; "range" beyond a mile."""
    rounded = show.rounded(value)
    if abs(rounded.mark) > MILE:
        raise Refusal(
            "range", f"{label} comes out longer than a mile.", "Check the numbers and their units."
        )
    return length_value(key, label, rounded, show.settings.display)


def count_told(key, label, value, _show):
    """A whole number as a VALUE."""
    words = ("minus " if value < 0 else "") + whole_in_words(abs(value))
    return {"key": key, "label": label, "kind": "count", "text": str(value), "words": words}


def _lengths_told(key, label, values, show):
    items = [
        length_told(f"{key}.{number}", each, value, show)
        for number, (each, value) in enumerate(values, 1)
    ]
    text = ", ".join(item["text"] for item in items)
    return {"key": key, "label": label, "kind": "lengths", "text": text, "items": items}


def _angle_told(key, label, degrees, _show):
    """An angle from 0 up, to a tenth of a degree; an irrational one has no exact text."""
    text = angle_text(degrees)
    rational = not isinstance(degrees, Real)
    shown = Fraction(text.removeprefix("≈ ").removesuffix("°"))
    dropped = sign(degrees - shown)
    return {
        "key": key,
        "label": label,
        "kind": "angle",
        "exact": rational_text(degrees) if rational else None,
        "text": text,
        "words": f"{decimal_in_words(str(text).removeprefix('≈ ').removesuffix('°'))} degrees",
        "dropped_text": f"{decimal_text(degrees, 4)}°" if dropped else "",
    }


def _text_told(key, label, text, _show):
    return {"key": key, "label": label, "kind": "text", "text": text}


_TOLD = {
    "length": length_told,
    "lengths": _lengths_told,
    "count": count_told,
    "angle": _angle_told,
    "text": _text_told,
}


def part_told(part, show):
    """A part as the contract's PART; every measure comes with its mark."""
    data = {"key": part.key, "name": part.name, "count": part.count}
    for key, label in (("length", "Length"), ("width", "Width"), ("thickness", "Thickness")):
        value = getattr(part, key)
        data[key] = None if value is None else length_told(key, label, value, show)
    data["ends"] = {
        side: {"cut": end.cut, "angle": end.angle}
        for side, end in (("left", part.left), ("right", part.right))
    }
    for key, label in (("long_side", "Long side"), ("short_side", "Short side")):
        if (value := getattr(part, key)) is not None:
            data[key] = length_told(key, label, value, show)
    return data | {"drawing": part.drawing}
