"""The wood that is there, offcuts too, as measured. Its rows are offers to a cutting plan."""

from fractions import Fraction

from sawside.boards.offer import Offer
from sawside.drawing.boards.pieces_of_wood import MOST_DRAWN, pieces_of_wood
from sawside.drawing.lazy import lazy
from sawside.errors import Refusal
from sawside.lengths.plain_numbers import number_text
from sawside.lengths.words import counted, listed
from sawside.reckoners.boards.shared.amounts import area_sum, area_text, board_feet_text
from sawside.reckoners.boards.shared.bad_stretches import bad_stretches, clear_stretches
from sawside.reckoners.boards.shared.hand_fields import BOARD, SHEET, STICK, WOOD
from sawside.reckoners.boards.shared.sold import exact
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.wood.board_measure import board_feet
from sawside.wood.numbers import metric

_LONGEST = 36
"""Letters of a title in the drawing: a note that has no room there is in its row."""


def compute(given, show):
    """How much there is of each form; "unreadable" or "impossible" for a bad stretch."""
    offers = tuple(_offer(number, row, show) for number, row in enumerate(given.wood, 1))
    by_form = {
        form: [each for each in offers if each.form == form] for form in (BOARD, SHEET, STICK)
    }
    clear = [
        (f"Wood {offer.key}", max(end - start for start, end in _clear(offer)))
        for offer in offers
        if offer.bad
    ]
    answers = {"pieces": sum(offer.count for offer in offers)}
    if by_form[BOARD]:
        answers["board_feet"] = board_feet_text(_together(by_form[BOARD], _board_feet), show)
    if by_form[SHEET]:
        answers["area"] = area_text(_together(by_form[SHEET], _area), show)
    if by_form[STICK]:
        answers["sticks"] = _together(by_form[STICK], lambda each: each.length)
    if clear:
        answers["clear"] = clear
    return Reckoning(
        answers=answers,
        working=tuple(_working(offers, show)),
        drawing=_drawing(offers, show),
        verdict=_verdict(by_form, answers),
        stock=offers,
    )


def _offer(number, row, show):
    stick = row.form == STICK
    length = exact(row.length, show)
    offer = Offer(
        key=str(number),
        form=row.form,
        material=row.material or "",
        length=length,
        width=exact(row.stick_width if stick else row.width, show),
        thickness=exact(row.stick_thickness if stick else row.thickness, show),
        count=row.count,
        bad=_bad(number, row, length, show),
        name=row.note or "",
    )
    if not _clear(offer):
        raise Refusal(
            "impossible",
            f"Wood {number}: the bad stretches take all of it.",
            "Leave it off the list.",
            field="wood",
            row=number - 1,
            part="bad",
        )
    return offer


def _bad(number, row, length, show):
    try:
        return bad_stretches(row.bad or "", length, show)
    except Refusal as refusal:
        refusal.message, refusal.field = f"Wood {number}: {refusal.message}", None
        raise refusal.of("wood", row=number - 1, part="bad") from None


def _clear(offer):
    return clear_stretches(offer.bad, offer.length)


def _board_feet(offer):
    return board_feet(offer.thickness, offer.width, offer.length)


def _area(offer):
    return offer.width * offer.length


def _together(offers, much):
    return sum((much(each) * each.count for each in offers), Fraction(0))


def _verdict(by_form, answers):
    many = [
        counted(sum(each.count for each in offers), form)
        for form, offers in by_form.items()
        if offers
    ]
    much = answers.get("board_feet") or answers.get("area") if len(many) == 1 else None
    return f"{listed(many)} on hand{f', {much}' if much else ''}"


def _working(offers, show):
    """How much each row is: board feet of inches, in a metric project too."""
    for offer in offers:
        many = f"{offer.count} × " if offer.count > 1 else ""
        if offer.form == BOARD:
            sizes = (offer.thickness, offer.width, offer.length)
            told = number_text(_board_feet(offer) * offer.count, 2)
            inches = " × ".join(show.pure(each, decimals=metric(show)) for each in sizes)
            yield f"Wood {offer.key}, inches: {many}{inches} ÷ 144 = {told} board feet"
        elif offer.form == SHEET:
            area = area_sum(offer.width, offer.length, show, offer.count)
            yield f"Wood {offer.key}: {area}"
        else:
            length = f"{many}{show.number(offer.length)}"
            yield f"Wood {offer.key}: {length} = {show.number(offer.length * offer.count)} of stick"
        if offer.bad:
            yield _longest(offer, show)


def _longest(offer, show):
    start, end = max(_clear(offer), key=lambda each: each[1] - each[0])
    rounded = show.rounded(end - start, "be there")
    between = f"{show.number(end)} − {show.number(start)}"
    return f"Wood {offer.key}, longest clear: {between}{show.equals(rounded)}"


@lazy
def _drawing(offers, show):
    shown = offers[:MOST_DRAWN]
    words = "The wood on hand, in scale."
    if any(each.bad for each in shown):
        words += " Bad stretches are crossed out, measured from the left end."
    if len(offers) > len(shown):
        words += f" The first {len(shown)} of {len(offers)}."
    return pieces_of_wood(words, [_drawn(each, show, many=len(offers) > 1) for each in shown])


def _drawn(offer, show, *, many):
    """A row in the drawing, with its number where there are `many`."""
    title = f"Wood {offer.key}: {_title(offer, show)}" if many else _title(offer, show)
    if offer.name and len(title) + len(offer.name) < _LONGEST:
        title += f", {offer.name}"
    return title, offer.length, offer.width, _told_bad(offer, show), 0


def _told_bad(offer, show):
    """Each bad stretch with its text, no shorter than it is."""
    told = []
    for start, end in offer.bad:
        first = show.bare(start, "go in").removesuffix(" mm") if start else "0"
        told.append((start, end, f"{first} to {show.bare(end, 'reach')}"))
    return told


def _title(offer, show):
    """What a row is called, as it is measured: thickness by width by length."""
    many = f"{offer.count} of " if offer.count > 1 else ""
    sizes = [each for each in (offer.thickness, offer.width, offer.length) if each is not None]
    told = " × ".join(show.brief(each) for each in sizes)
    return ", ".join(filter(None, (f"{many}{told}", offer.material)))


RECKONER = Reckoner(
    key="wood_on_hand",
    title="Wood on hand",
    asks="What boards, sheets and offcuts do I have to cut from?",
    words=(
        "wood on hand, on hand, my wood, what wood do I have, inventory, shop stock, "
        "boards I have, sheets I have, bad spots, leftovers, offcuts on hand"
    ),
    order=920,
    job="boards",
    picture={
        "wood": "M4 8h22v5H4zM4 17h28v5H4zM4 26h14v5H4z",
        "ink": "M2 13h36M2 22h36M2 31h36M2 4v33M38 4v33",
    },
    fields=(WOOD,),
    answers=(
        Answer("pieces", "Pieces on hand", "count"),
        Answer("board_feet", "Boards", "text"),
        Answer("area", "Sheets", "text"),
        Answer("sticks", "Sticks, total length", must="be there"),
        Answer("clear", "Longest clear stretch", "lengths", must="be there"),
    ),
    source="Arithmetic. Board foot: NIST Handbook 44, by the sizes you measured.",
    compute=compute,
    example={
        "wood": [
            {
                "form": "board",
                "material": "cherry",
                "thickness": "13/16",
                "width": "6 3/8",
                "length": "85 1/2",
                "count": "1",
                "bad": '0 to 1 1/2", 40" to 44"',
            }
        ]
    },
)
