"""The strip: one inch, or one centimeter, drawn large, with the marks of the person's tape.

A person touches the mark that they see on their own tape instead of spelling it.
"""

from fractions import Fraction

from sawside.lengths.display import mixed_text
from sawside.lengths.tape import INCH_SIZES
from sawside.lengths.words import decimal_in_words, fraction_in_words

_MARKS_OF_DECIMALS = 32
"""The division drawn when marks are decimals of an inch: a tape has no such marks to touch."""


def strip(settings):
    """The contract of `strip` (without "ok").

    Each mark has its place along the strip (0 to 1), the text that touching it writes after the
    whole number, and its words. The mark at 1 belongs to the next number: it is drawn, and writes
    nothing (`text` None).
    """
    return _centimeter(settings) if settings.grid.unit == "mm" else _inch(settings)


def _inch(settings):
    parts = settings.grid.division or _MARKS_OF_DECIMALS
    marks = []
    for number in range(parts + 1):
        place = Fraction(number, parts)
        text = mixed_text(place) if 0 < place < 1 else ""
        words = fraction_in_words(place.numerator, place.denominator) if text else "no fraction"
        labelled = text if place.denominator in (2, 4) else ""
        marks.append(_mark(place, INCH_SIZES[place.denominator], labelled, text, words))
    return {"unit": "in", "words": "Fraction of an inch", "separator": " ", "marks": _closed(marks)}


def _centimeter(settings):
    parts = 20 if settings.grid.name == "0.5 mm" else 10
    marks = []
    for number in range(parts + 1):
        millimeters = Fraction(10 * number, parts)
        whole, half = divmod(millimeters, 1)
        text = f"{whole}.5" if half else f"{whole}"
        size = 0.4 if half else 1.0 if whole % 10 == 0 else 0.8 if whole == 5 else 0.6
        labelled = text if not half and whole < 10 else ""
        words = f"{decimal_in_words(text)} millimeters"
        marks.append(_mark(Fraction(number, parts), size, labelled, text, words))
    return {"unit": "mm", "words": "Part of a centimeter", "separator": "", "marks": _closed(marks)}


def _mark(place, size, label, text, words):
    return {"at": float(place), "size": size, "label": label, "text": text, "words": words}


def _closed(marks):
    """The last mark is the next whole number: drawn, not written."""
    return [*marks[:-1], marks[-1] | {"text": None, "label": "", "words": ""}]
