"""How a face frame is worked out, line by line, with this case's numbers."""

from sawside.reckoners.case.shared.frame.columns import rails_of, shares_of
from sawside.reckoners.case.shared.frame.cut_list import stock_by_width
from sawside.reckoners.case.shared.frame.openings import (
    equal_bay,
    first_center,
    rails_between,
    stiles_between,
)
from sawside.reckoners.case.shared.frame.outline import case_bottom, pasts_of


def working(given, show, layout, kinds):
    """Every line: the outside, what the case makes of widths, openings, members, stock."""
    if given.size_of == "case":
        yield from _outside(given, show, layout.outline)
    fitting = show.by("go in")
    yield from _across(given, fitting, layout)
    yield from _down(given, fitting, layout)
    yield from _members(fitting, layout, kinds)
    for width, total in stock_by_width(kinds).items():
        pieces = [
            f"{each.count} × {show.number(each.member.length)}"
            for each in kinds
            if each.member.width == width
        ]
        yield (
            f"Stock {fitting.text(width)} wide: {' + '.join(pieces)}"
            f"{show.equals(show.rounded(total, 'reach'))}"
        )


def _outside(given, show, outline):
    pasts = left, right = [show.number(each) for each in pasts_of(given)]
    yield f"Frame width: {show.number(given.width)} + {left} + {right}{show.equals(outline.width)}"
    less = f" − {show.number(given.kick)}" if given.stiles_run == "kick" else ""
    yield (
        f"Frame height: {show.number(given.height)} + {show.number(given.top_past)}{less}"
        f"{show.equals(outline.height)}"
    )
    side, fitting = show.number(given.side), show.by("go in")
    stiles = (outline.left, outline.right)
    for name, past, stile, inside in zip(
        ("Left", "Right"), pasts, stiles, outline.insides, strict=True
    ):
        if given.edge != "width" and getattr(given, f"{name.lower()}_stile") is None:
            reveal = f" + {show.number(given.reveal)}" if given.edge == "past" else ""
            yield f"{name} stile width: {past} + {side}{reveal}{fitting.equals(stile)}"
        elif inside >= 0:
            yield (
                f"{name} stile past the side’s inside: {show.number(stile)} − {past} − {side}"
                f"{show.equals(inside)}"
            )
        else:
            yield f"{name} side showing: {past} + {side} − {show.number(stile)}" + show.equals(
                -inside
            )
    yield _bottom(given, show, outline)


def _bottom(given, show, outline):
    kick, top = show.number(given.kick), show.number(case_bottom(given))
    rail = show.number(outline.bottom)
    if given.bottom_rail is None and given.bottom_edge != "width":
        lip = f" + {show.number(given.lip)}" if given.bottom_edge == "above" else ""
        fitting = show.by("go in")
        return f"Bottom rail width: {top}{lip} − {kick}{fitting.equals(outline.bottom)}"
    if outline.lip >= 0:
        return f"Bottom rail above the case bottom: {kick} + {rail} − {top}" + show.equals(
            outline.lip
        )
    return f"Case bottom showing: {top} − {kick} − {rail}{show.equals(-outline.lip)}"


def _across(given, show, layout):
    outline, number = layout.outline, stiles_between(given)
    wood = [outline.left, outline.right]
    yield from _openings(
        show,
        "across",
        outline.width,
        wood,
        number,
        layout.middle_stile,
        layout.widths,
        given.widths,
        _centered(given, show, layout) if given.bays == "centered" else None,
    )


def _down(given, show, layout):
    outline = layout.outline
    wood = [outline.top, outline.bottom, *([outline.foot] if outline.foot else [])]
    if given.rows == "columns":
        for column, heights in enumerate(layout.heights, 1):
            yield from _column(given, show, layout, wood, column, heights)
        return
    number = rails_between(given)
    yield from _openings(
        show,
        "down",
        outline.height,
        wood,
        number,
        layout.middle_rail,
        layout.heights[0],
        given.heights,
    )


def _column(given, show, layout, wood, column, heights):
    """The openings of a column: those that were given, and what the others share."""
    above, name = rails_of(given, column), f"Column {column}"
    less = [show.number(each) for each in wood]
    if above:
        less.append(f"{len(above)} × {show.number(layout.middle_rail)}")
    high, room = show.number(layout.outline.height), sum(heights)
    yield f"{name}, openings: {high} − {' − '.join(less)} = {show.number(room)}"
    rest, many = shares_of(given, show, room, column)
    taken = [show.number(each) for each in above if each is not None]
    if taken:
        left = f"{show.number(room)} − {' − '.join(taken)}"
        told = show.equals(rest) if many == 1 else f" = {show.number(rest)}"
        yield f"{name}, {'last opening' if many == 1 else 'left'}: {left}{told}"
    if many > 1:
        shared = [height for height, each in zip(heights, (*above, None), strict=True) if not each]
        share, alike = f"{show.number(rest)} ÷ {many}", len(set(shared)) == 1
        told = show.equals(shared[0]) if alike else f" = {show.number(rest / many)}"
        yield f"{name}, equal openings: {share}{told}"
        if not alike:
            yield _on_marks(show, f"in column {column}", shared)


def _openings(show, way, whole, wood, number, middle, found, listed, centered=None):
    less = [show.number(each) for each in wood]
    less += [f"{number} × {show.number(middle)}"] if number else []
    room = sum(found)
    yield (f"Openings {way}: {show.number(whole)} − {' − '.join(less)} = {show.number(room)}")
    if listed is not None:
        given = " − ".join(show.number(each) for each in listed)
        yield f"Last opening {way}: {show.number(room)} − {given}{show.equals(found[-1])}"
        return
    if centered is not None:
        yield from centered
        yield _on_marks(show, way, found)
        return
    share = f"{show.number(room)} ÷ {number + 1}"
    if len(set(found)) == 1:
        yield f"Each opening {way}: {share}{show.equals(found[0])}"
        return
    yield f"Equal openings {way}: {share} = {show.number(room / (number + 1))}"
    yield _on_marks(show, way, found)


def _on_marks(show, way, found):
    sizes = (f"{found.count(each)} × {show.number(each)}" for each in dict.fromkeys(found))
    return f"On your marks {way}: {' + '.join(sizes)} = {show.number(sum(found))}"


def _centered(given, show, layout):
    """From the bays of the case to the first opening of the frame."""
    side, stile = show.number(given.side), show.number(layout.middle_stile)
    number, bay = given.middle_stiles, equal_bay(given)
    yield (
        f"Equal bays: ({show.number(given.width)} − {number + 2} × {side}) ÷ {number + 1}"
        f" = {show.number(bay)}"
    )
    if number:
        center, past = first_center(given), pasts_of(given)[0]
        left = layout.outline.left
        yield f"First divider’s center: {side} + {show.number(bay)} + {side} ÷ 2 = " + show.number(
            center
        )
        first = past + center - layout.middle_stile / 2 - left
        yield (
            f"First opening across: {show.number(past)} + {show.number(center)} − {stile} ÷ 2 − "
            f"{show.number(left)} = {show.number(first)}"
        )


def _members(show, layout, kinds):
    outline = layout.outline
    for each in kinds:
        member = each.member
        if member.upright and member.name != "Middle stile":
            continue
        if member.upright:
            whole = outline.height
            less = [outline.foot] if outline.foot else []
            less += [outline.bottom, outline.top] if member.high < outline.height else []
        elif member.bay is None:
            whole, less = outline.width, [outline.left, outline.right]
        else:
            whole, less = member.shoulder, []
        shoulder = " − ".join(show.number(length) for length in (whole, *less))
        more = "".join(f" + {show.number(length)}" for length in member.adds if length)
        if less or more:
            yield f"{each.name}: {shoulder}{more}{show.equals(member.length)}"
