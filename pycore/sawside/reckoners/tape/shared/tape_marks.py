"""The small marks of a tape: which there are, and a length counted in them."""

from sawside.lengths.display import decimal_text
from sawside.lengths.words import parts_in_words


def divisions(*parts):
    """The choices of a division: "16" for Sixteenths."""
    return {str(part): parts_in_words(part).capitalize() for part in parts}


def in_marks(size, show):
    """A length counted in the marks of the settings: "1 1/2 marks (sixteenths)"."""
    grid = show.settings.grid
    number = size / grid.step
    shown = show.pure(number) if 8 % number.denominator == 0 else decimal_text(number, 1)
    word = "marks" if number == 0 or number > 1 else "mark" if number == 1 else "of a mark"
    return f"{shown} {word} ({parts_in_words(grid.division) if grid.division else grid.name})"
