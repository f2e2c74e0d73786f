"""How a length is told: text, stacked fraction, words, the other system, decimals, plain form.

Every text here is read back by the reader to the very value that it tells, except those that
begin with ≈ or end with … because something was cut.
"""

from fractions import Fraction

from sawside.lengths.bounded import is_bounded
from sawside.lengths.marks import GRIDS, Rounded, to_mark, told_mark
from sawside.lengths.real import Real, settle, sign
from sawside.lengths.units import INCHES_PER
from sawside.lengths.words import decimal_in_words, fraction_in_words, whole_in_words

MINUS = "−"
_MM = INCHES_PER["mm"]
_DECIMALS = 6
_MOST_DECIMALS = 24


def rational_text(value):
    """A rational as the contract writes it: "289/8", "-3", "0"."""
    return str(Fraction(value))


def is_written(value):
    """Whether an exact number is told as a fraction: it is one, and not of hundreds of digits."""
    return not isinstance(value, Real) and is_bounded(value)


def mixed_text(value):
    """A rational number as it is written in the shop, without a unit: "36 1/8", "5 7/12"."""
    whole, rest = divmod(abs(value), 1)
    text = " ".join(
        part
        for part in (str(whole) if whole or not rest else "", str(rest) if rest else "")
        if part
    )
    return (MINUS if value < 0 else "") + text


def decimal_text(value, most_places=_DECIMALS):
    """An exact number in decimals, at most `most_places`; "…" is appended when it was cut.

    What is less than the last of them, and not nothing, has as many as its first digit takes.
    """
    shown = _whole(abs(value) * 10**most_places)
    if not shown and sign(value):
        most_places, shown = _first_digit(abs(value), most_places)
    cut = isinstance(value, Real) or abs(value) * 10**most_places != shown
    whole, decimals = divmod(shown, 10**most_places)
    text = f"{whole}.{decimals:0{most_places}d}" if most_places else str(whole)
    if not cut:
        text = text.rstrip("0").rstrip(".") if most_places else text
    return (MINUS if sign(value) < 0 else "") + text + ("…" if cut else "")


def _whole(number):
    return settle(number, lambda exact: exact.numerator // exact.denominator)[0]


def _first_digit(value, places):
    """How many decimals it takes to tell more than 0, and the digit; `places` where too many."""
    for more in range(places + 1, _MOST_DECIMALS + 1):
        if digit := _whole(value * 10**more):
            return more, digit
    return places, 0


def _in_feet(rounded, display):
    return display == "ft-in" and rounded.grid.unit == "in" and abs(rounded.mark) >= 12


def metric(rounded, display):
    """Whether a mark is told in millimeters: one that lies on them always is."""
    return display == "mm" or rounded.grid.unit == "mm"


def _split(rounded, display):
    """The parts of a mark in its display: sign, feet or None, number in the unit, unit."""
    mark = abs(rounded.mark)
    sign_text = MINUS if rounded.mark < 0 else ""
    if metric(rounded, display):
        return sign_text, None, mark / _MM, "mm"
    if _in_feet(rounded, display):
        feet, inches = divmod(mark, 12)
        return sign_text, feet, inches, "″"
    return sign_text, None, mark, "″"


def _is_fractional(rounded, display):
    return rounded.grid.division is not None and display != "mm"


def mark_text(rounded, display):
    """The mark with its unit: "36 1/8″", "3′ 0 1/8″", "918 mm"."""
    sign_text, feet, number, unit = _split(rounded, display)
    written = mixed_text(number) if _is_fractional(rounded, display) else _fixed(rounded, number)
    feet_text = "" if feet is None else f"{feet}′ "
    if feet is not None and 0 < number < 1 and _is_fractional(rounded, display):
        written = f"0 {written}"
    return f"{sign_text}{feet_text}{written}{' mm' if unit == 'mm' else unit}"


def brief_text(rounded, display):
    """The mark where no small print stands beside it: "≈ 36 1/8″", "≈ 36 1/8″ (down)"."""
    about = "" if rounded.direction == "exact" else "≈ "
    return f"{about}{mark_text(rounded, display)}{rounded.way}"


def _fixed(rounded, number):
    """A decimal with the places of its grid; a fraction of an inch in millimeters needs its own."""
    places = rounded.grid.places
    if number * 10**places % 1:
        return decimal_text(number, _most_places(rounded))
    whole, decimals = divmod(int(number * 10**places), 10**places)
    return f"{whole}.{decimals:0{places}d}" if places else str(whole)


def _most_places(rounded):
    """Decimals that tell a mark exactly, in millimeters too: 0.1 in is 2.54, a 64th 0.396875."""
    return max(rounded.grid.places + 1, 12)


def plain_text(rounded, display):
    """The form for copying, in plain characters; the reader reads it back to the mark."""
    return _plain(mark_text(rounded, display))


def _plain(text):
    return text.replace("″", '"').replace("′", "'").replace(MINUS, "-")


def stack(rounded, display):
    """The parts of the mark, for a stacked fraction. `whole` is None beside a lone fraction."""
    sign_text, feet, number, unit = _split(rounded, display)
    parts = {"sign": sign_text, "feet": None if feet is None else str(feet)}
    if not _is_fractional(rounded, display):
        return parts | {
            "whole": _fixed(rounded, number),
            "numerator": None,
            "denominator": None,
            "unit": unit,
        }
    whole, rest = divmod(number, 1)
    return parts | {
        "whole": str(whole) if whole or not rest or feet is not None else None,
        "numerator": str(rest.numerator) if rest else None,
        "denominator": str(rest.denominator) if rest else None,
        "unit": unit,
    }


def mark_in_words(rounded, display):
    """The mark in words: "thirty-six and one eighth inches"."""
    sign_text, feet, number, unit = _split(rounded, display)
    words = ["minus"] if sign_text else []
    if feet is not None:
        words.append(f"{whole_in_words(feet)} {'foot' if feet == 1 else 'feet'}")
        if number == 0:
            return " ".join(words)
    if not _is_fractional(rounded, display):
        name = "millimeter" if unit == "mm" else "inch"
        many = "millimeters" if unit == "mm" else "inches"
        in_words = decimal_in_words(decimal_text(number, _most_places(rounded)))
        words.append(f"{in_words} {name if number == 1 else many}")
        return " ".join(words)
    whole, rest = divmod(number, 1)
    if not rest:
        words.append(f"{whole_in_words(whole)} {'inch' if whole == 1 else 'inches'}")
    elif whole:
        fraction = fraction_in_words(rest.numerator, rest.denominator)
        words.append(f"{whole_in_words(whole)} and {fraction} inches")
    else:
        fraction = fraction_in_words(rest.numerator, rest.denominator)
        words.append(f"{'and ' if feet is not None else ''}{fraction} of an inch")
    return " ".join(words)


def other_text(exact, display):
    """The exact value in the other system: to 0.1 mm, or to 1/64 in. ≈ says it was rounded.

    What is less than half of that, and not nothing, is told in small decimals.
    """
    grid, form = (GRIDS["1/64"], "in") if display == "mm" else (GRIDS["0.1 mm"], "mm")
    rounded = told_mark(exact, grid)
    if rounded.direction != "exact":
        return f"≈ {mark_text(rounded, form)}"
    return f"{decimal_text(exact / _MM)} mm" if form == "mm" else mark_text(rounded, form)


def finer_text(rounded, display):
    """The sixty-fourth that is nearer than a mark of parts of an inch: "≈ 1 5/64″"; else ""."""
    if metric(rounded, display) or rounded.grid.division is None or rounded.direction == "exact":
        return ""
    finer = to_mark(rounded.exact, GRIDS["1/64"])
    return brief_text(finer, display) if finer.mark != rounded.mark else ""


def dropped_text(rounded, display):
    """What rounding took away, with its direction: "1/64″ light", "0.3 mm heavy", or "".

    Where it had to go that way, why: "0.3 mm heavy, rounded down so it fits".
    """
    direction = rounded.direction
    if direction == "exact":
        return "" if rounded.settled else "on the mark to 600 decimals"
    return ", ".join(filter(None, (_dropped(rounded, display, direction), rounded.why)))


def _dropped(rounded, display, direction):
    size = abs(rounded.dropped)
    if metric(rounded, display):
        return f"{_rough(size * (1 / _MM))} mm {direction}"
    if not isinstance(size, Real) and 64 % size.denominator == 0:
        return f"{mixed_text(size)}″ {direction}"
    return f"{_rough(size)}″ {direction}"


def _rough(size):
    """A small size to a thousandth, for the eye; less than half of one is told as such."""
    thousandths, _ = settle(size * 1000, round)
    return decimal_text(Fraction(thousandths, 1000), 3) if thousandths else "less than 0.001"


def length_value(key, label, rounded, display):
    """One length as the contract's VALUE."""
    if not isinstance(rounded, Rounded):
        raise TypeError("a length is told only with its mark")
    display = "mm" if metric(rounded, display) else display
    rational = is_written(rounded.exact)
    text = mark_text(rounded, display)
    return {
        "key": key,
        "label": label,
        "kind": "length",
        "exact": rational_text(rounded.exact) if rational else None,
        "rational": rational,
        "text": text,
        "brief": brief_text(rounded, display),
        "mark": rational_text(rounded.mark),
        "dropped": rational_text(rounded.dropped) if rational else _dropped_about(rounded),
        "dropped_text": dropped_text(rounded, display),
        "direction": rounded.direction,
        "why": rounded.why,
        "way": rounded.way.strip(),
        "stack": stack(rounded, display),
        "words": mark_in_words(rounded, display),
        "other": other_text(rounded.exact, display),
        "decimals": decimal_text(rounded.exact * (1 / _MM) if display == "mm" else rounded.exact),
        "in_decimals": _in_decimals(rounded.exact, display),
        "plain": _plain(text),
        "exact_plain": f'{mixed_text(rounded.exact)}"'.replace(MINUS, "-") if rational else None,
    }


def _in_decimals(exact, display):
    """A length in decimals with its unit, as small print has it: "7.225″", "≈ 8.0515″"."""
    number, places, unit = (exact * (1 / _MM), 3, " mm") if display == "mm" else (exact, 4, "″")
    whole = decimal_text(number)
    if not whole.endswith("…"):
        return f"{whole}{unit}"
    steps, _ = settle(number * 10**places, round)
    text = decimal_text(Fraction(steps, 10**places), places) if steps else whole.rstrip("…")
    return f"≈ {text}{unit}"


def _dropped_about(rounded):
    return "≈" + decimal_text(rounded.dropped, 9).rstrip("…").replace(MINUS, "-")
