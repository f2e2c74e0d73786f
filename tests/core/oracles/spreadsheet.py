"""A small spreadsheet that shares no code with the project, and random projects beside it.

A cell is a number and so many times some other cells, or a piece with a 45° miter at both ends,
which is two widths longer than what was measured inside (common practice, no source). It is worked
out by plain recursion, and a circle is found by walking the names.
"""

from fractions import Fraction

from sawside.project.schema.cache import forget
from tests.core.projects import begun, change, view

NAMES = ["Side", "Side gap", "Top rail", "h2", "Back (left)", "3rd shelf", "Höhe", "x"]
BARE = {"Side", "Side gap", "Top rail", "h2", "Höhe"}
WIDTH = Fraction(9, 4)


class Cell:
    """`number` and `terms`, (times, name); a piece adds two widths."""

    def __init__(self, number, terms, piece):
        self.number, self.terms, self.piece = number, terms, piece

    def text(self, bare):
        """The sum as a person may type it, with or without brackets."""
        parts = [f"{self.number.numerator}/{self.number.denominator} in"]
        for times, name in self.terms:
            called = name if bare and name in BARE else f"[{name}]"
            parts.append(f"{'-' if times < 0 else '+'} {abs(times)} × {called}")
        return " ".join(parts)


def worth(cells, name):
    """What a cell is worth, by recursion; None when it uses what is not there."""
    cell = cells.get(name)
    if cell is None:
        return None
    used = [(times, worth(cells, other)) for times, other in cell.terms]
    if any(value is None for _, value in used):
        return None
    total = cell.number + sum(times * value for times, value in used)
    if cell.piece and not Fraction(1, 64) <= total <= 1200:
        return None
    return total + 2 * WIDTH if cell.piece else total


def goes_round(cells, name):
    """Whether a cell uses itself, directly or through others."""
    seen, waiting = set(), [other for _, other in cells[name].terms]
    while waiting:
        each = waiting.pop()
        if each == name:
            return True
        if each in cells and each not in seen:
            seen.add(each)
            waiting += [other for _, other in cells[each].terms]
    return False


def random_cell(chance, names):
    """A cell that uses up to three of some names."""
    terms = [
        (chance.choice([-1, 1, 2, 3]), chance.choice(names)) for _ in range(chance.randint(0, 3))
    ]
    return Cell(Fraction(chance.randint(640, 3840), 64), terms, chance.random() < 0.5)


def faults(chance):
    """What a random project says otherwise than the spreadsheet: kept, corrected, deleted."""
    document, cells, ids = begun(), {}, {}
    order = chance.sample(NAMES, len(NAMES))
    for name in order:
        cell = random_cell(chance, order[: order.index(name)] or ["Side"])
        cell.terms = [term for term in cell.terms if worth(cells, term[1]) is not None]
        said = _given(document, None, name, cell, chance)
        tried = cells | {name: cell}
        if said["ok"] != (worth(tried, name) is not None):
            yield f"kept {name} = {cell.text(False)}: {said}"
        if said["ok"]:
            document, cells, ids[name] = said["document"], tried, said["id"]
    yield from _otherwise(document, cells)
    for _ in range(chance.randint(0, 4) if cells else 0):
        name = chance.choice(sorted(cells))
        cell = random_cell(chance, sorted(cells))
        cell.piece = cells[name].piece
        tried = cells | {name: cell}
        said = _given(document, ids[name], name, cell, chance)
        if goes_round(tried, name):
            if said["ok"] or "refers back to itself" not in said["error"]["message"]:
                yield f"corrected {name} = {cell.text(False)}, a circle: {said}"
            continue
        if said["ok"] != (worth(tried, name) is not None):
            yield f"corrected {name} = {cell.text(False)}: {said}"
        if said["ok"]:
            yield from _followed_otherwise(said, cells, tried, name)
            document, cells = said["document"], tried
            yield from _otherwise(document, cells)
    if cells:
        gone = chance.choice(sorted(cells))
        document = change(document, "delete", id=ids[gone])["document"]
        left = {name: cell for name, cell in cells.items() if name != gone}
        yield from _otherwise(document, left)
        forget()
        yield from _otherwise(document, left)


def _given(document, identity, name, cell, chance):
    """The answer to a cell that is kept, or corrected where it has an id."""
    text = cell.text(chance.random() < 0.5)
    act = "correct" if identity else "keep_line" if cell.piece else "keep_reading"
    if cell.piece:
        more = {"reckoner": "mitered_length", "values": {"known": text, "width": "2 1/4"}}
    else:
        more = {"text": text}
    return change(document, act, id=identity, name=name, **more)


def _otherwise(document, cells):
    shown = {
        entry["name"]: Fraction(entry["headline"]["exact"]) if entry["ok"] else None
        for entry in view(document, drawings=False)["entries"]
    }
    expected = {name: worth(cells, name) for name in cells}
    if shown != expected:
        yield f"shown {shown}, expected {expected}"


def _followed_otherwise(said, before, now, name):
    changed = {each for each in now if each != name and worth(before, each) != worth(now, each)}
    told = {each["name"] for each in said["follows"]}
    if told != changed:
        yield f"{name} was corrected, {told} followed, expected {changed}"
