"""The bays of a case as its dividers are marked, and what the shelves of each are cut to. Inches.

Equal bays seldom lie on marks. So each divider is put on a mark once, from the inside of the left
side, and the bays are what those places leave: told numbers then go together.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import accumulate

from sawside.errors import Refusal
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.marks import told_mark
from sawside.lengths.words import counted
from sawside.reckoners.case.shared.carcass.as_measured import measured_text


@dataclass(frozen=True, slots=True)
class Bays:
    """Clear widths from the left: of each bay, and the width that the shelves in it are cut for,
    the narrowest of those within a mark. `even` is what equal bays share, None for listed ones."""

    clear: tuple[Fraction, ...]
    cut_for: tuple[Fraction, ...]
    even: Fraction | None

    def shelf_key(self, kind, bay):
        """The key of the part that the shelves of a kind in a bay are, counted from 0: bays whose
        shelves are cut alike share one."""
        listed = self.even is None
        alike = list(zip(self.cut_for, self.clear, strict=True)) if listed else self.cut_for
        return kind if len(set(alike)) == 1 else f"{kind}_{alike.index(alike[bay]) + 1}"


def bays_of(given, inside, joint, show):
    """The `Bays` of a form; "impossible" where one has no width."""
    asked, even = _asked(given, inside, show)
    thick = given.thickness
    clear = asked if even is None else _marked(asked, inside, thick, show)
    there = _as_told(clear, inside, thick, joint, show)
    alike = _listed_alike(clear) if even is None else _within_a_mark(clear, there, joint, show)
    narrowest = {
        number: min(min(clear[each], there[each]) for each in group)
        for group in alike
        for number in group
    }
    return Bays(clear, tuple(narrowest[number] for number in range(len(clear))), even)


def _asked(given, inside, show):
    """(the clear widths before any is marked, the width of equal ones or None)."""
    many, listed = given.dividers + 1, given.bay_widths or ()
    clear = inside - given.dividers * given.thickness
    if listed and len(listed) != given.dividers:
        raise _wrong_number(given.dividers, len(listed))
    rest = clear - sum(listed)
    if rest <= 0:
        raise Refusal(
            "impossible",
            f"The dividers and bays take up {show.text(inside - rest)}, but the inside width is "
            f"{measured_text(inside, show)}.",
            "Use fewer dividers or narrower bays.",
            field="bay_widths" if listed else "dividers",
        )
    return ((*listed, rest), None) if listed else ((clear / many,) * many, clear / many)


def _wrong_number(dividers, listed):
    one = dividers == 1
    remedy = "Enter all bays but the last one, or none for equal bays."
    if not dividers:
        remedy = f"Enter {counted(listed, 'divider')} for {counted(listed + 1, 'bay')}."
    return Refusal(
        "impossible",
        f"{counted(dividers, 'divider')} {'makes' if one else 'make'} "
        f"{counted(dividers + 1, 'bay')}, but there {'is' if listed == 1 else 'are'} "
        f"{counted(listed, 'bay width')}.",
        remedy,
        field="bay_widths",
    )


def _starts(bays, thick):
    """The left face of each divider, from the inside of the left side."""
    ends = accumulate(bays[:-1])
    return [end + number * thick for number, end in enumerate(ends)]


def _between(places, inside, thick):
    """The clear widths that dividers leave whose left faces are at these places."""
    starts = (Fraction(0), *(place + thick for place in places))
    return tuple(end - start for start, end in zip(starts, (*places, inside), strict=True))


def _marked(bays, inside, thick, show):
    grid = show.settings.grid
    places = [told_mark(place, grid).mark for place in _starts(bays, thick)]
    marked = _between(places, inside, thick)
    return marked if min(marked) > 0 else bays


def _as_told(bays, inside, thick, joint, show):
    """The bays in a case whose bottom is cut and marked as it is told: the same, unless a
    thickness or a depth lies on no mark."""
    if len(bays) == 1:
        return bays
    places = [on_fine_marks(joint + place, show).mark - joint for place in _starts(bays, thick)]
    return _between(places, show.mark(inside + 2 * joint) - 2 * joint, thick)


def _listed_alike(bays):
    """The numbers of the bays of each width, from 0."""
    alike = {}
    for number, bay in enumerate(bays):
        alike.setdefault(bay, []).append(number)
    return alike.values()


def _within_a_mark(bays, there, joint, show):
    """The numbers of the bays that one length of shelf fits, at most a mark short in any."""
    groups, grid = [], show.settings.grid
    for number in sorted(range(len(bays)), key=lambda each: min(bays[each], there[each])):
        if groups:
            first = groups[-1][0]
            narrow = min(bays[first], there[first])
            cut = told_mark(narrow + 2 * joint, grid, must="go in").mark
            if there[number] + 2 * joint - cut <= grid.step:
                groups[-1].append(number)
                continue
        groups.append([number])
    return groups
