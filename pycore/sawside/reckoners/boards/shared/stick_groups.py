"""The sticks of a plan as they are told: alike ones once, in words and along their length."""

from dataclasses import dataclass
from fractions import Fraction
from itertools import groupby
from typing import NamedTuple

from sawside.boards.told import PlannedStick


class Run(NamedTuple):
    """Pieces alike beside each other: the length, the name, how many, and whether mitered."""

    length: Fraction
    name: str
    count: int
    mitered: bool


@dataclass(frozen=True, slots=True)
class Group:
    """Sticks that are cut alike: how many, the number of the first one (from 1), one of them, and
    for each of its sections the runs of its pieces."""

    count: int
    first: int
    stick: PlannedStick
    runs: tuple[tuple[Run, ...], ...]

    @property
    def numbers(self):
        """How they are called: "Stick 4", "Sticks 1 and 2", "Sticks 1 to 3"."""
        last = self.first + self.count - 1
        if self.count == 1:
            return f"Stick {last}"
        return f"Sticks {self.first} {'and' if self.count == 2 else 'to'} {last}"

    @property
    def sections(self):
        """(section, its runs), section by section."""
        return tuple(zip(self.stick.sections, self.runs, strict=True))


def groups_of(plan, pieces):
    """The sticks of a plan in groups, those to buy first; `pieces` are those of the request."""
    made, first = [], 1
    told = sorted(
        ((*_order(stick, pieces), place) for place, stick in enumerate(plan.sticks)),
        key=lambda each: each[:-1],
    )
    for _, alike in groupby(told, key=lambda each: each[:-1]):
        sticks = [plan.sticks[place] for *_, place in alike]
        runs = tuple(_runs(section.laid, pieces) for section in sticks[0].sections)
        made.append(Group(len(sticks), first, sticks[0], runs))
        first += len(sticks)
    return made


def _order(stick, pieces):
    """By what sticks are sorted, and alike: long ones first, then those with long pieces."""
    runs = tuple(
        tuple((-run.length, -run.count, run.name) for run in _runs(section.laid, pieces))
        for section in stick.sections
    )
    places = tuple((each.near, each.far) for section in stick.sections for each in section.laid)
    bounds = tuple((section.start, section.end) for section in stick.sections)
    return not stick.bought, -stick.stock.length, runs, places, bounds


def _runs(laid, pieces):
    def alike(each):
        piece = pieces[each.place]
        return piece.length, piece.name, not piece.square

    return tuple(
        Run(length, name, len(list(those)), mitered)
        for (length, name, mitered), those in groupby(laid, key=alike)
    )


def stock_text(show, length):
    """A length as wood is sold by it: "8 ft" where it is whole feet and not told in millimeters."""
    if show.settings.display != "mm" and length % 12 == 0:
        return f"{length // 12} ft"
    return show.brief(length)


def cutting_list(show, groups):
    """All sticks in one text, each with its pieces and its offcut."""
    return "; ".join(_told(show, group) for group in groups) + "."


def _told(show, group):
    where = stock_text(show, group.stick.stock.length)
    where += "" if group.stick.bought else ", on hand"
    whole = not group.stick.stock.bad
    sections = (
        ("" if whole else f"{_stretch(show, section)}: ") + _cut(show, section, runs)
        for section, runs in group.sections
        if runs
    )
    return f"{group.numbers} ({where}): {', then '.join(sections)}"


def _stretch(show, section):
    """From where to where a section can be used."""
    return f"{show.brief(section.start, 'reach')} to {show.brief(section.end, 'go in')}"


def _cut(show, section, runs):
    named = (
        f"{f'{run.count} × ' if run.count > 1 else ''}{show.brief(run.length)}"
        f"{f' {run.name}' if run.name else ''}{' mitered' if run.mitered else ''}"
        for run in runs
    )
    rest = f", {show.brief(section.left, 'be there')} left" if section.left else ""
    return f"{' + '.join(named)}{rest}"


class Along(NamedTuple):
    """What lies along a stick in its drawing: (start, end) of its near and its far edge."""

    near: tuple[Fraction, Fraction]
    far: tuple[Fraction, Fraction]
    role: str
    text: str = ""
    name: str = ""


def along(show, group, request, least):
    """(title, length, [`Along`]) of a group for the drawing; offcuts from `least` on are named."""
    stock, runs = group.stick.stock, []
    for section in group.stick.sections:
        runs += [_piece_along(show, request, laid) for laid in section.laid]
        if left := section.left:
            is_saved, stretch = left >= least, (section.end - left, section.end)
            text = f"{show.brief(left, 'be there')} left" if is_saved else ""
            runs.append(Along(stretch, stretch, "ghost" if is_saved else "waste", text))
    for start, end in stock.bad:
        stretch = max(start, Fraction(0)), min(end, stock.length)
        if stretch[0] < stretch[1]:
            runs.append(Along(stretch, stretch, "bad"))
    where = stock_text(show, stock.length) + ("" if group.stick.bought else ", on hand")
    return f"{group.numbers}: {where}", stock.length, runs


def _piece_along(show, request, laid):
    piece = request.pieces[laid.place]
    return Along(laid.near, laid.far, "stock", show.brief(piece.length), piece.name)
