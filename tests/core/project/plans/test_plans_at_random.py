"""Any project planned, cut at random and planned again, sawn by a blade of the tests' own."""

import random
from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st
from planned import by_hand, kept, on_hand, on_sale, planned, wanted
from projects import acts, begun, change, changed, lasting, view

from tests.core.oracles.sawn_plan import faults, fixed, inches

THICK = ("3/4", "23/32", "1/2")
KERFS = ("1/8", "3/32", "1/16")
GRAINS = ("", "along", "across", "any", "matched", "matched end to end")


@st.composite
def projects(draw):
    """Pieces by hand of a few woods, some of them on hand."""
    document = changed(begun(), "set", settings={"kerf": draw(st.sampled_from(KERFS))})
    thick = draw(st.lists(st.sampled_from(THICK), min_size=1, max_size=2, unique=True))
    if draw(st.booleans()):
        document = acts(document, on_hand(*draw(st.lists(woods(thick), min_size=1, max_size=4))))
    if draw(st.booleans()):
        document = acts(document, on_sale(*draw(st.lists(sheets(thick), min_size=1, max_size=2))))
    for number in range(draw(st.integers(1, 5))):
        about = {"grain": draw(st.sampled_from(GRAINS))}
        if draw(st.booleans()):
            about["rough_length"] = "1/2"
        piece = by_hand(
            f"Piece {number}",
            draw(lengths(3, 50)),
            draw(lengths(1, 26)),
            draw(st.sampled_from(thick)),
            str(draw(st.integers(1, 4))),
            about,
        )
        document = acts(document, piece)
    return document


def lengths(least, most):
    """Lengths in sixteenths, as typed."""
    return st.integers(least * 16, most * 16).map(lambda parts: f"{parts}/16")


@st.composite
def woods(draw, thick):
    """A row of the wood on hand."""
    row = {
        "form": draw(st.sampled_from(["board", "sheet"])),
        "thickness": draw(st.sampled_from([*thick, "1", "18 mm"])),
        "width": draw(st.sampled_from(["5 1/2", "11 1/4", "24", "48"])),
        "length": draw(st.sampled_from(["30", "60", "96"])),
        "count": str(draw(st.integers(1, 3))),
    }
    return row | ({"bad": "10 to 14"} if draw(st.booleans()) else {})


@st.composite
def sheets(draw, thick):
    """A row of the wood to buy: sheets that are trimmed, some with a price."""
    return {
        "sold": "sheet",
        "thickness": draw(st.sampled_from(thick)),
        "width": draw(st.sampled_from(["24", "48"])),
        "length": "96",
        "trim": draw(st.sampled_from(["0", "1/16", "1/2"])),
    } | draw(st.sampled_from([{}, {"price": "40", "sheet_per": "piece"}]))


def there(document):
    """{source: how many} of the wood on hand, and any number of what is on sale."""
    return {
        f"{entry['id']}:{number}": int(row.get("count", "1000"))
        for entry in document["entries"]
        if entry.get("reckoner") in ("wood_on_hand", "wood_to_buy")
        for number, row in enumerate(entry["values"]["wood"], 1)
    }


def thin_or_thick(document, plan):
    """Pieces that their board doesn't make: one is planed by 1/2 in and half of it at most, and is
    never thinner; a sheet is 3/64 in off at most."""
    asked = {
        (piece["entry"], piece["part"]): Fraction(piece["thickness"]["mark"])
        for piece in view(document, drawings=False)["pieces"]
    }
    for board in plan["boards"]:
        thick = inches(board["thickness"])
        for piece in board["pieces"]:
            off = thick - asked[piece["entry"], piece["part"]]
            sheet = board["form"] == "sheet"
            most = Fraction(3, 64) if sheet else min(Fraction(1, 2), thick / 2)
            if not -Fraction(3 if sheet else 1, 64) <= off <= most:
                yield f"{piece} out of {board['thickness']}"


def judged(document, plan, left_out):
    """What is wrong with a plan of a project that leaves some pieces out."""
    asked = wanted(document)
    open_ = {}
    for board in plan["boards"]:
        for piece in board["pieces"]:
            if not piece.get("done") and not board.get("bad"):
                key = piece["entry"], piece["part"]
                open_[key] = open_.get(key, 0) + 1
    short = {key for key, (*_, count) in asked.items() if open_.get(key, 0) < count}
    named = {(at["entry"], at["part"]) for each in left_out for at in each["pieces"]}
    held = {key: (*size, open_[key]) for key, (*size, _) in asked.items() if key in open_}
    over = [key for key in open_ if key not in asked or open_[key] > asked[key][2]]
    said = faults(plan, held, on_hand=there(document)) + list(thin_or_thick(document, plan))
    return said + [f"{key} is over" for key in over] + [f"{key} unsaid" for key in short - named]


@settings(max_examples=60)
@given(projects())
def test_every_plan_is_sawn_as_it_says(document):
    answer = planned(document)
    if answer["act"] is not None:
        assert judged(document, answer["act"]["plan"], answer["plan"]["left_out"]) == []
    assert answer["unplanned"] == 0 or answer["plan"]["left_out"]


def at_the_saw(document, chance):
    """A few pieces cut, one perhaps scrapped, a board perhaps bad."""
    for _ in range(chance.randint(1, 6)):
        piece = chance.choice(view(document, drawings=False)["pieces"])
        if piece["left"] > 0:
            document = changed(document, "cut", id=piece["entry"], part="piece", by=1)
            if chance.random() < 0.25:
                document = changed(document, "spoil", id=piece["entry"], part="piece")
    boards = document["plan"]["boards"]
    if boards and chance.random() < 0.3:
        said = change(document, "board_bad", board=chance.choice(boards)["key"])
        if said["ok"]:
            assert lasting(changed(said["document"], **said["undo"])) == lasting(document)
            document = said["document"]
    return document


@settings(max_examples=30)
@given(projects(), st.integers(0, 10**6))
def test_nothing_that_is_cut_moves_when_it_is_planned_again(document, number):
    chance = random.Random(f"saw {number}")
    if planned(document)["act"] is None:
        return
    document = kept(document)
    cut = {}
    for _ in range(2):
        document = at_the_saw(document, chance)
        if chance.random() < 0.2:
            document = changed(document, "set", settings={"kerf": chance.choice(KERFS)})
        answer = planned(document)
        assert judged(document, answer["act"]["plan"], answer["plan"]["left_out"]) == []
        document = changed(document, **answer["act"])
        now = fixed(document["plan"])
        for key, places in cut.items():
            assert all(place in now[key] for place in places)
        cut = now
        assert not view(document, drawings=False)["plan"]["stale"] or answer["unplanned"]
