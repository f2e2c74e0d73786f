"""Sheets of paper laid over each other by their joining lines, as a person would, and measured.

It knows nothing of how the sheets were cut: only where lines and circles stand on each sheet.
"""

from itertools import pairwise

import sawside


def printed(reckoner, paper, values, settings=None):
    """What the door draws on paper for a question; it must succeed."""
    message = {"do": "paper", "reckoner": reckoner, "values": values, "paper": paper}
    said = sawside.handle(message | ({"settings": settings} if settings else {}))
    assert said["ok"], said
    return said


def shapes(sheet, kind, role):
    """The shapes of a sheet that have a kind and a role."""
    return [each for each in sheet["shapes"] if (each["kind"], each["role"]) == (kind, role)]


def level(sheet, role):
    """{name: y} of the level lines of a role."""
    lines = shapes(sheet, "line", role)
    return {
        each["name"]: each["from"][1]
        for each in lines
        if "name" in each and each["from"][1] == each["to"][1]
    }


def laid_together(sheets):
    """[(sheet, by how much its y must be moved)] when joining lines lie on joining lines.

    Both lines of a joint must ask for the same move.
    """
    laid = [(sheets[0], 0.0)]
    for one, other in pairwise(sheets):
        here, there = level(one, "join"), level(other, "join")
        moves = {round(here[name] - there[name], 3) for name in here if name in there}
        assert len([name for name in here if name in there]) == 2
        assert len(moves) == 1
        laid.append((other, laid[-1][1] + moves.pop()))
    return laid


def heights(sheets, role="mark"):
    """{name: all heights above the lower end} of the named level lines, on every sheet."""
    foot = max(each["from"][1] for each in shapes(sheets[0], "line", "end"))
    found = {}
    for sheet, move in laid_together(sheets):
        for name, y in level(sheet, role).items():
            found.setdefault(name, []).append(foot - (y + move))
    return found
