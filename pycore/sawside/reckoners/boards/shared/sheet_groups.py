"""The sheets of a plan as they are told: alike ones once, cut by cut in words."""

from collections import Counter
from dataclasses import dataclass
from fractions import Fraction
from itertools import groupby

from sawside.boards.sheets.plan import PlannedSheet
from sawside.reckoners.boards.shared.stick_groups import stock_text


@dataclass(frozen=True, slots=True)
class SheetGroup:
    """Sheets that are cut alike: how many, the number of the first one (from 1), one of them."""

    count: int
    first: int
    sheet: PlannedSheet

    @property
    def numbers(self):
        """How they are called: "Sheet 4", "Sheets 1 and 2", "Sheets 1 to 3"."""
        last = self.first + self.count - 1
        to = "and" if self.count == 2 else "to"
        return f"Sheet {last}" if self.count == 1 else f"Sheets {self.first} {to} {last}"


def groups_of(plan):
    """The sheets of a plan in groups, those to buy first, the fullest before the others."""
    counts = Counter(plan.sheets)
    order = sorted(counts, key=lambda sheet: (not sheet.bought, _left(sheet)))
    made, first = [], 1
    for sheet in order:
        made.append(SheetGroup(counts[sheet], first, sheet))
        first += counts[sheet]
    return made


def _left(sheet):
    return sum(part.length * part.width for part in sheet.offcuts) / (
        sheet.stock.length * sheet.stock.width
    )


def size_text(show, length, width):
    """A size as it is written: 30″ × 11 1/4″, the length first."""
    return f"{show.brief(length)} × {show.brief(width)}"


def sheet_text(show, sheet):
    """A sheet as it is sold: 8 ft × 4 ft."""
    return f"{stock_text(show, sheet.length)} × {stock_text(show, sheet.width)}"


@dataclass(frozen=True, slots=True)
class Taken:
    """What comes off a part, or is left of it, by its `size` along it: a panel (its place in the
    request), a part that is cut further (its `Chain`), or an offcut."""

    size: Fraction
    panel: int | None = None
    further: "Chain | None" = None


@dataclass(frozen=True, slots=True)
class Chain:
    """The cuts one way through one part, of this length and width, in their order."""

    way: str
    length: Fraction
    width: Fraction
    taken: tuple[Taken, ...]


def chain_of(sheet):
    """The `Chain` of the cuts through the whole of a sheet, or None where none is needed."""
    cuts = {cut.part: (number, cut) for number, cut in enumerate(sheet.cuts)}
    return _chain(cuts, 0, sheet.stock.length, sheet.stock.width) if cuts else None


def _chain(cuts, place, length, width):
    number, cut = cuts[place]
    way, taken = cut.way, []
    while True:
        taken.append(_taken(cuts, 2 * number + 1, cut.takes, way))
        place, rest = 2 * number + 2, cut.leaves
        if place not in cuts or cuts[place][1].way != way:
            break
        number, cut = cuts[place]
    if rest:
        taken.append(_taken(cuts, place, rest, way))
    return Chain(way, length, width, tuple(taken))


def _taken(cuts, place, part, way):
    further = _chain(cuts, place, part.length, part.width) if place in cuts else None
    return Taken(part.width if way == "rip" else part.length, part.panel, further)


def _chains(first):
    """A chain and all that are cut out of it, alike ones once, level by level."""
    found, waiting = [], [first]
    while waiting:
        chain = waiting.pop(0)
        if chain not in found:
            found.append(chain)
            waiting += [taken.further for taken in chain.taken if taken.further]
    return found


def _letter(place):
    """A, B, … Z, AA, AB, …"""
    letters = ""
    while place >= 0:
        place, rest = divmod(place, 26)
        letters, place = chr(ord("A") + rest) + letters, place - 1
    return letters


def cuts_text(show, sheet, panels):
    """The cuts of a sheet in words: those of the whole first, then those of each part that is cut
    further, by its letter."""
    first = chain_of(sheet)
    if first is None:
        return f"one piece, {panels[sheet.whole].name or 'no cuts'}"
    chains = _chains(first)
    letters = {chain: _letter(place) for place, chain in enumerate(chains[1:])}
    told = []
    for chain in chains:
        way = chain.way if chain in letters else chain.way.capitalize()
        parts = [_told(show, taken, letters, panels) for taken in chain.taken]
        is_matched = any(_is_matched(taken, panels) for taken in chain.taken)
        runs = [(each, len(list(those))) for each, those in groupby(parts)]
        counts = runs if is_matched else Counter(parts).items()
        text = ", ".join(f"{n} × {each}" if n > 1 else each for each, n in counts)
        pieces = [taken for taken in chain.taken if taken.panel is not None or taken.further]
        text += ", in this order" if is_matched and len(pieces) > 1 else ""
        told.append(f"{letters[chain]}: {way} {text}" if chain in letters else f"{way} {text}")
    return ". ".join(told)


def _is_matched(taken, panels):
    """Whether a part is one of those that are cut in the order of the list, or becomes one."""
    if taken.panel is not None:
        return bool(panels[taken.panel].match)
    of = taken.further.taken if taken.further else ()
    return len([each for each in of if each.panel is not None]) == 1 and any(
        _is_matched(each, panels) for each in of
    )


def _told(show, taken, letters, panels):
    if taken.further:
        return f"{show.brief(taken.size)} ({letters[taken.further]})"
    if taken.panel is None:
        return f"{show.brief(taken.size, 'be there')} left"
    name = panels[taken.panel].name
    return f"{show.brief(taken.size)}{f' {name}' if name else ''}"


def cutting_list(show, groups, panels):
    """All sheets in one text."""
    told = []
    for group in groups:
        where = sheet_text(show, group.sheet.stock) + ("" if group.sheet.bought else ", on hand")
        told.append(f"{group.numbers} ({where}): {cuts_text(show, group.sheet, panels)}")
    return ". ".join(told) + "."
