"""The sticks of a plan as they are told: alike ones once, in words and along their length."""

from dataclasses import dataclass
from fractions import Fraction
from itertools import groupby

from sawside.boards.told import PlannedStick
from sawside.lengths.words import counted


@dataclass(frozen=True, slots=True)
class Group:
    """Sticks that are cut alike: how many, the number of the first one (from 1), one of them, and
    the lengths of its pieces from long to short as (length, how many, name)."""

    count: int
    first: int
    stick: PlannedStick
    pieces: tuple[tuple[Fraction, int, str], ...]

    @property
    def numbers(self):
        """How they are called: "Stick 4", "Sticks 1 to 3"."""
        last = self.first + self.count - 1
        return f"Stick {last}" if self.count == 1 else f"Sticks {self.first} to {last}"


def groups_of(plan, pieces):
    """The sticks of a plan in groups, those to buy first; `pieces` are those of the request."""
    told = sorted(
        (
            (not stick.bought, -stick.stock.length, _runs(stick, pieces), place)
            for place, stick in enumerate(plan.sticks)
        ),
        key=lambda each: (
            each[0],
            each[1],
            tuple((-length, -n, name) for length, n, name in each[2]),
        ),
    )
    made, first = [], 1
    for (_, _, runs), alike in groupby(told, key=lambda each: each[:3]):
        places = [place for *_, place in alike]
        made.append(Group(len(places), first, plan.sticks[places[0]], runs))
        first += len(places)
    return made


def _runs(stick, pieces):
    ordered = sorted(
        ((pieces[place].length, pieces[place].name) for place in stick.pieces),
        key=lambda each: (-each[0], each[1]),
    )
    return tuple((length, len(list(alike)), name) for (length, name), alike in groupby(ordered))


def stock_text(show, length):
    """A length as wood is sold by it: "8 ft" where it is whole feet and not told in millimeters."""
    if show.settings.display != "mm" and length % 12 == 0:
        return f"{length // 12} ft"
    return show.brief(length)


def cutting_list(show, groups):
    """All sticks in one text, each with its pieces and its offcut."""
    return "; ".join(_told(show, group) for group in groups) + "."


def _told(show, group):
    named = (
        f"{f'{number} × ' if number > 1 else ''}{show.brief(length)}{f' {name}' if name else ''}"
        for length, number, name in group.pieces
    )
    where = stock_text(show, group.stick.stock.length)
    where += "" if group.stick.bought else ", on hand"
    left = group.stick.offcut
    rest = f", {show.brief(left, 'be there')} left" if left else ""
    return f"{group.numbers} ({where}): {' + '.join(named)}{rest}"


def along(show, group, request, least):
    """(title, length, runs) of a group for the drawing; offcuts from `least` on are named."""
    length, place, runs = group.stick.stock.length, request.trim, []
    for piece, number, _ in group.pieces:
        for _ in range(number):
            runs.append((place, place + piece, "stock", show.brief(piece)))
            place += piece + request.kerf
    if left := group.stick.offcut:
        end = length - request.trim
        text = show.brief(left, "be there") if left >= least else ""
        runs.append((end - left, end, "ghost" if left >= least else "waste", text))
    title = f"{group.count} × " if group.count > 1 else ""
    title += stock_text(show, length) + ("" if group.stick.bought else " on hand")
    return title + f", {counted(sum(n for _, n, _ in group.pieces), 'piece')}", length, runs
