"""A project of random links agrees with a small spreadsheet that shares no code with it.

A cell of the spreadsheet is a number and so many times some other cells, or a piece with a 45°
miter at both ends, which is two widths longer than what was measured inside (common practice, no
source). It is worked out by plain recursion, and a circle is found by walking the names.
"""

from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st
from projects import begun, change, changed, view

from sawside.project.memory import forget

NAMES = ["Side", "Side gap", "Top rail", "h2", "Back (left)", "3rd shelf", "Höhe", "x"]
BARE = {"Side", "Side gap", "Top rail", "h2", "Höhe"}
WIDTH = Fraction(9, 4)


class Cell:
    """`number` and `terms`, (times, name); a piece adds two widths."""

    def __init__(self, number, terms, piece):
        self.number, self.terms, self.piece = number, terms, piece

    def text(self, bare):
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


@st.composite
def cell(draw, names):
    number = draw(st.fractions(min_value=10, max_value=60, max_denominator=64))
    terms = draw(
        st.lists(st.tuples(st.sampled_from([-1, 1, 2, 3]), st.sampled_from(names)), max_size=3)
    )
    return Cell(number, terms, draw(st.booleans()))


def kept(document, name, made, bare):
    """The document with one more cell, or the refusal."""
    if made.piece:
        values = {"known": made.text(bare), "width": "2 1/4"}
        return change(document, "keep_line", name=name, reckoner="mitered_length", values=values)
    return change(document, "keep_reading", name=name, text=made.text(bare))


def corrected(document, identity, made, bare):
    if made.piece:
        values = {"known": made.text(bare), "width": "2 1/4"}
        return change(document, "correct", id=identity, values=values)
    return change(document, "correct", id=identity, text=made.text(bare))


def shown(document):
    """What the project says of each entry."""
    return {
        entry["name"]: Fraction(entry["headline"]["exact"]) if entry["ok"] else None
        for entry in view(document, drawings=False)["entries"]
    }


@settings(max_examples=300)
@given(st.data())
def test_random_links_are_worked_out_as_a_spreadsheet_does(data):
    document, cells, ids = begun(), {}, {}
    order = data.draw(st.permutations(NAMES))
    for name in order:
        made = data.draw(cell(order[: order.index(name)] or ["Side"]))
        made.terms = [term for term in made.terms if worth(cells, term[1]) is not None]
        said = kept(document, name, made, data.draw(st.booleans()))
        tried = cells | {name: made}
        assert said["ok"] == (worth(tried, name) is not None), (made.text(False), said)
        if said["ok"]:
            document, cells, ids[name] = said["document"], tried, said["id"]
    assert shown(document) == {name: worth(cells, name) for name in cells}
    for _ in range(data.draw(st.integers(0, 4))):
        if not cells:
            return
        name = data.draw(st.sampled_from(sorted(cells)))
        made = data.draw(cell(sorted(cells)))
        made.piece = cells[name].piece
        tried = cells | {name: made}
        said = corrected(document, ids[name], made, data.draw(st.booleans()))
        if goes_round(tried, name):
            assert "goes round in a circle" in said["error"]["message"]
            continue
        assert said["ok"] == (worth(tried, name) is not None), said
        if not said["ok"]:
            continue
        before, now = ({each: worth(c, each) for each in cells} for c in (cells, tried))
        assert {each["name"] for each in said["follows"]} == {
            each for each in cells if each != name and before[each] != now[each]
        }
        document, cells = said["document"], tried
        assert shown(document) == now
    if cells:
        gone = data.draw(st.sampled_from(sorted(cells)))
        left = {name: made for name, made in cells.items() if name != gone}
        document = changed(document, "delete", id=ids[gone])
        expected = {name: worth(left, name) for name in left}
        assert shown(document) == expected
        forget()
        assert shown(document) == expected
