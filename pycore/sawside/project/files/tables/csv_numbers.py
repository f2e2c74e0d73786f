"""Numbers as a spreadsheet of another country writes them: 31,5, and 1.024 in thousands."""

import re

from sawside.errors import Refusal, quoted

_NAME = r"\[[^\[\]]*\]"
_DECIMAL_COMMA = re.compile(rf"{_NAME}|(?<![\d.,])(\d+),(\d+)(?![\d.,])")
_GROUPED = re.compile(r"(?<![\d.,'’])[1-9]\d{0,2}(?:[.'’]\d{3})+(?!\d)")


def is_decimal_comma(cell):
    """Whether a cell is a number with a comma before its decimals, and nothing else."""
    return re.fullmatch(r"[-+]?\d+,\d+", cell.strip()) is not None


def with_points(text):
    """A text with points for the commas before decimals.

    One that may part thousands as well, as in 1,024, is left for the reader to refuse.
    """
    return _DECIMAL_COMMA.sub(_with_point, text)


def _with_point(match):
    whole, decimals = match.groups()
    if whole is None or (len(decimals) == 3 and _GROUPED.fullmatch(f"{whole}.{decimals}")):
        return match[0]
    return f"{whole}.{decimals}"


def refuse_grouped(row, text):
    """Refuse a number in which a point or apostrophe may part thousands, as in 1.024.

    `text` is a cell of the table's `row` that was typed or changed there.
    """
    found = _GROUPED.search(re.sub(_NAME, "", text)) if row.grouped else None
    if found:
        raise Refusal(
            "unreadable",
            f"Row {row.number}: {quoted(found[0])} could mean two things in this table.",
            "Write it as a fraction, or as a whole number in plain digits.",
            field="text",
        )
