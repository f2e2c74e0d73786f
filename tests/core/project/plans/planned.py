"""Projects with pieces and wood, planned, cut and judged in a test."""

from fractions import Fraction

from projects import acts, answered, begun, changed, view


def by_hand(name, length, width="2 1/4", thickness="3/4", count="1", about=None):
    """A piece by hand, as an act."""
    values = {
        "count": count,
        "length": length,
        "width": width,
        "thickness": thickness,
        "left_end": "square",
        "right_end": "square",
    }
    told = {} if about is None else {"about": {"piece": about}}
    return ("keep_line", {"name": name, "reckoner": "piece_by_hand", "values": values} | told)


def on_hand(*rows):
    """Wood on hand, as an act; a row has its form, and what differs from a board 8 ft long."""
    usual = {"form": "board", "thickness": "3/4", "length": "96", "count": "1"}
    wood = [usual | row for row in rows]
    return (
        "keep_line",
        {"name": "Wood on hand", "reckoner": "wood_on_hand", "values": {"wood": wood}},
    )


def on_sale(*rows):
    """Wood to buy, as an act."""
    return (
        "keep_line",
        {"name": "Wood to buy", "reckoner": "wood_to_buy", "values": {"wood": list(rows)}},
    )


def nothing_to_help_on_sale():
    """Wood to buy that no piece comes out of, as an act: so nothing usual is planned on."""
    return on_sale(
        {"sold": "sheet", "material": "Cork", "thickness": "2", "width": "48", "length": "96"}
    )


def planned(document, effort=0):
    """The answer of `plan`, which must succeed."""
    return answered("plan", document, effort=effort)


def kept(document, effort=0):
    """The document with the plan that was made of it."""
    return changed(document, **planned(document, effort)["act"])


def wanted(document):
    """{(entry, part): (length, width, how many are left)} as the project tells its pieces."""
    found = {}
    for piece in view(document, drawings=False)["pieces"]:
        sizes = piece["rough"] or piece
        width = sizes["width"] and Fraction(sizes["width"]["mark"])
        if piece["left"] > 0:
            key = piece["entry"], piece["part"]
            found[key] = Fraction(sizes["length"]["mark"]), width, piece["left"]
    return found


def said_of(told):
    """Every cut of a plan as it is said, board by board."""
    return {
        board["name"]: [cut["said"] for cut in board["cuts"]]
        for group in told["groups"]
        for board in group["boards"]
    }


def rails():
    """Pieces of one width, as a document."""
    return acts(
        begun(),
        by_hand("Stile", "30 1/4", count="4"),
        by_hand("Rail", "16 1/2", count="6"),
        by_hand("Long rail", "60", count="2"),
    )
