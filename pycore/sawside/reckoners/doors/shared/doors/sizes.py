"""How big doors are in their opening, or an opening around them. Inches, exact but where rounded.

Along each way, across and up: opening = gaps at both ends + doors + gaps between. A lap is a gap
below 0.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.fine import fine_grid, fine_text, limit_text
from sawside.lengths.marks import Rounded
from sawside.lengths.real import Exact, sign
from sawside.reckoners.doors.shared.doors.fields import SOLID
from sawside.reckoners.wood.shared.moisture_fields import Board, board_of

LEAST = Fraction(1)
"""Of a door, in inches: what is less is a slip of the pen."""


@dataclass(frozen=True, slots=True)
class Span:
    """Doors side by side along one way: the gaps asked for at its `start` and `end` (less than 0
    is a lap) and `between` them, the `opening`, and each door's `size` as it is cut.

    `asked` is a door's size when it is at its tightest, `grown` how many times today's size that
    is: more than 1 for solid wood across its grain. `needs` is the opening on its mark where that
    was asked for, else None.
    """

    opening: Exact
    start: Fraction
    end: Fraction
    between: Fraction
    count: int
    asked: Exact
    grown: Exact
    size: Rounded
    needs: Rounded | None = None

    @property
    def cut(self) -> Fraction:
        """A door's size on its mark; one that is there already is what it is."""
        return self.size.mark if self.needs is None else self.size.exact

    @property
    def gaps_asked(self) -> Fraction:
        """All gaps together, less laps."""
        return self.start + self.end + (self.count - 1) * self.between

    @property
    def spare(self) -> Exact:
        """What cutting to a mark, and room to swell, leaves more than the gaps asked for."""
        return self.opening - self.count * self.cut - self.gaps_asked


@dataclass(frozen=True, slots=True)
class Doors:
    """The doors of a form: `across` and `up` are their `Span`s; `board` is of solid wood, which
    grows along "across", "up" or neither (its panel alone does)."""

    across: Span
    up: Span
    board: Board | None
    grows: str

    @property
    def count(self):
        """How many."""
        return self.across.count


def doors_of(given, show):
    """The `Doors`; "impossible" where gaps leave nothing, or laps are as wide as the door."""
    board = board_of(given) if given.made in SOLID else None
    grows = {"up": "across", "across": "up"}[given.grain] if given.made == "solid" else ""
    left, right, bottom, top = _ends(given, show)
    between = given.between if given.doors > 1 else Fraction(0)
    _check_lip(given, show, (left, right, bottom, top))
    ways = (
        ("across", "width", left, right, between, given.doors),
        ("up", "height", bottom, top, Fraction(0), 1),
    )
    spans = []
    for way, key, start, end, middle, count in ways:
        grown = board.grown if way == grows else Fraction(1)
        make = _around if given.known == "door" else _within
        spans.append(make(given, show, key, (start, end, middle, count), grown))
    _check_body(given, show, spans)
    _check_banding(given, show, spans)
    return Doors(*spans, board, grows)


def _ends(given, show):
    """The gaps at left, right, bottom and top; a lap is below 0."""
    if given.fit == "inset":
        bottom, top = (
            given.gap if each is None else each for each in (given.bottom_gap, given.top_gap)
        )
        return given.gap, given.gap, bottom, top
    sides, ends = _laps(given, show)
    usual = {"left": sides, "right": sides, "bottom": ends, "top": ends}
    typed = {side: getattr(given, f"{side}_lap") for side in usual}
    return tuple(-(usual[side] if typed[side] is None else typed[side]) for side in usual)


def _laps(given, show):
    """(at the sides, at top and bottom) as the fit makes them."""
    if given.fit in ("overlay", "lipped"):
        lap = given.lap if given.fit == "overlay" else given.lip
        return lap, lap
    full = given.edge - given.reveal
    if full < 0:
        raise Refusal(
            "impossible",
            f"A {show.text(given.reveal)} reveal is more than the edge, {show.text(given.edge)}.",
            f"Make it {show.text(given.edge)} at most.",
            field="reveal",
        )
    if given.fit == "full":
        return full, full
    half = (given.edge - given.between) / 2
    if half < 0:
        raise Refusal(
            "impossible",
            f"The gap between doors, {show.text(given.between)}, is more than the edge they share, "
            f"{show.text(given.edge)}.",
            f"Make it {show.text(given.edge)} at most.",
            field="between",
        )
    return half, full


def _check_lip(given, show, ends):
    """The part behind the lip has to go into the opening."""
    if given.fit == "lipped" and given.lip_rabbet <= max(-each for each in ends):
        lap = show.text(max(-each for each in ends))
        raise Refusal(
            "impossible",
            f"A {show.text(given.lip_rabbet)} rabbet can’t go in with a lip {lap} past the "
            "opening.",
            f"Make the rabbet wider than {lap}: 1/8 in wider is common.",
            field="lip_rabbet",
        )


def _check_body(given, show, spans):
    """Something has to be left of a door between its lips' rabbets; one of a pair has one."""
    if given.fit != "lipped":
        return
    most = min(span.cut / (1 if span.count > 1 else 2) for span in spans)
    if given.lip_rabbet >= most:
        raise Refusal(
            "impossible",
            f"Lip rabbets {show.text(given.lip_rabbet)} wide leave nothing of the door to go into "
            "the opening.",
            f"Make it less than {show.text(most)}.",
            field="lip_rabbet",
        )


def _check_banding(given, show, spans):
    """What is banded has to be there."""
    least = min(span.cut for span in spans)
    if given.banding and least - 2 * given.banding < LEAST:
        raise Refusal(
            "impossible",
            f"Banding {show.text(given.banding)} thick on both edges leaves less than "
            f"{show.text(LEAST)} of a slab {show.text(least)} across.",
            f"Make it {limit_text((least - LEAST) / 2, show, 'stay under')} at most.",
            field="banding",
        )


def _within(given, show, key, ends, grown):
    """The `Span` in an opening."""
    start, end, between, count = ends
    opening = getattr(given, key)
    asked = (opening - start - end - (count - 1) * between) / count
    if asked < LEAST:
        told = fine_text(max(asked, Fraction(0)), show)
        field = "doors" if count > 1 else key
        raise Refusal(
            "impossible",
            f"The gaps leave each door {told} of an opening {show.text(opening)}: under "
            f"{show.text(LEAST)}.",
            "Use fewer doors, smaller gaps or a bigger opening.",
            field=field,
        )
    size = show.rounded(asked / grown, "go in")
    return Span(opening, start, end, between, count, asked, grown, size)


def _around(given, show, key, ends, grown):
    """The `Span` of an opening around doors that are there already."""
    start, end, between, count = ends
    door = getattr(given, key)
    asked = door * grown
    opening = count * asked + start + end + (count - 1) * between
    if sign(opening - LEAST) < 0:
        raise Refusal(
            "impossible",
            f"A door {show.text(door)} with these laps covers no opening of "
            f"{show.text(LEAST)} or more.",
            "Check the door’s size, or enter smaller laps.",
            field=key,
        )
    size = show.rounded(door, "go in")
    needs = show.rounded(opening, "reach")
    return Span(needs.mark, start, end, between, count, asked, grown, size, needs)


def betweens_of(show, span):
    """The gaps between doors as they come out; none with one door."""
    many = span.count - 1
    if not many:
        return []
    step = fine_grid(show.settings).step
    marks, rest = divmod(span.spare, step)
    each, wider = divmod(marks, many)
    shares = [(each + (number < wider)) * step for number in range(many)]
    shares[-1] += rest
    return [span.between + share for share in shares]


def gaps_of(show, doors):
    """(name, gap) all around as they come out; a lap is below 0."""
    across, up = doors.across, doors.up
    betweens = betweens_of(show, across)
    last = across.end + (0 if betweens else across.spare)
    names = [f"Between {number} and {number + 1}" for number in range(1, across.count)]
    names = ["Between"] if len(names) == 1 else names
    return [
        ("Left", across.start),
        *zip(names, betweens, strict=True),
        ("Right", last),
        ("Bottom", up.start),
        ("Top", up.end + up.spare),
    ]
