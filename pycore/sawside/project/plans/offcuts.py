"""What is left of a board and worth saving."""

from fractions import Fraction

SHORTEST, NARROWEST = Fraction(12), Fraction(3)
"""Inches of an offcut that is saved: common practice, no source."""


def kept_offcuts(board):
    """The parts of a board that are left over and worth saving, the largest first."""
    parts = [board.parts[number] for number in board.rest]
    saved = [
        part
        for part in parts
        if part.length >= SHORTEST
        and (part.width is None or part.width >= min(NARROWEST, board.width))
        and not _is_bad(board, part)
    ]
    return sorted(saved, key=lambda part: -part.length * (part.width or 1))


def _is_bad(board, part):
    end = part.x + part.length
    return any(start < end and part.x < stop for start, stop in board.flaws)
