"""A kept plan sawn with a blade of its own: rectangles and a kerf, nothing of the product's code.

It reads the document as it is kept and the pieces as the project tells them.
"""

from collections import Counter
from fractions import Fraction


def inches(text):
    """The number of a kept text: "289/8 in"."""
    return Fraction(text.split(" ")[0])


def sawn(board, kerf):
    """Every part of a board as (x, y, along, across), and the numbers of those that are whole; one
    that was begun with another blade has its own kerf."""
    kerf = inches(board["kerf"]) if "kerf" in board else kerf
    across = inches(board["width"]) if "width" in board else None
    parts = [(Fraction(0), Fraction(0), inches(board["length"]), across)]
    whole = {0}
    for cut in board["cuts"]:
        assert cut["part"] in whole, "nothing is cut twice"
        whole.remove(cut["part"])
        x, y, along, wide = parts[cut["part"]]
        at = inches(cut["at"])
        size = along if cut["way"] == "crosscut" else wide
        assert 0 <= at <= size, "no more comes off than there is"
        left = max(size - at - kerf, Fraction(0))
        if cut["way"] == "crosscut":
            parts += [(x, y, at, wide), (x + along - left, y, left, wide)]
        else:
            parts += [(x, y, along, at), (x, y + wide - left, along, left)]
        whole |= {len(parts) - 2, len(parts) - 1}
    return parts, whole


def faults(plan, wanted, *, on_hand=None):
    """What is wrong with a plan, as sentences.

    `wanted` is {(entry, part): (along, across or None, how many)}; `on_hand` is {source: how many}.
    """
    said, got, kerf = [], Counter(), inches(plan["kerf"])
    taken = Counter()
    for board in plan["boards"]:
        parts, whole = sawn(board, kerf)
        if not board.get("bought") and "from" in board:
            taken[board["from"]] += 1
        seen = set()
        for piece in board["pieces"]:
            if piece["of"] not in whole or piece["of"] in seen:
                said.append(f"{piece} is no whole part of {board['key']}")
            seen.add(piece["of"])
            if piece.get("done") or board.get("bad"):
                continue
            key = piece["entry"], piece["part"]
            got[key] += 1
            x, y, *size = parts[piece["of"]]
            said += _placed(board, piece, wanted.get(key), (x, y), size)
        own = inches(board["kerf"]) if "kerf" in board else kerf
        said += _apart(board, [parts[each] for each in sorted(seen)], own)
    missing = {key: count for key, (*_, count) in wanted.items() if got[key] != count}
    if missing or got.keys() - wanted.keys():
        said.append(f"planned {dict(got)}, wanted {missing}")
    if on_hand is not None:
        said += [
            f"{many} of {source}" for source, many in taken.items() if many > on_hand.get(source, 0)
        ]
    return said


def _placed(board, piece, asked, at, size):
    """What is wrong with one piece: its size, and whether it lies in what is bad or trimmed."""
    if asked is None:
        return [f"nobody asked for {piece}"]
    along, across, _ = asked
    if piece.get("turned"):
        along, across = across, along
    if size[0] != along or (across is not None and size[1] is not None and size[1] != across):
        return [f"{piece} is {size}, not {along} by {across}"]
    trim = inches(board["trim"]) if "trim" in board else 0
    said = []
    if at[0] < trim or at[0] + size[0] > inches(board["length"]) - trim:
        said.append(f"{piece} is in a trim of {board['key']}")
    edged = board["form"] != "stick" and "width" in board
    if edged and (at[1] < trim or at[1] + size[1] > inches(board["width"]) - trim):
        said.append(f"{piece} is in a trimmed edge of {board['key']}")
    for flaw in board.get("flaws", ()):
        if at[0] < inches(flaw["end"]) and inches(flaw["start"]) < at[0] + size[0]:
            said.append(f"{piece} is in bad wood of {board['key']}")
    return said


def _apart(board, parts, kerf):
    """Pieces of one board have a kerf between them, one way or the other."""
    for number, (x, y, along, across) in enumerate(parts):
        for other_x, other_y, other_along, other_across in parts[:number]:
            beside = x >= other_x + other_along + kerf or other_x >= x + along + kerf
            above = across is not None and (
                y >= other_y + other_across + kerf or other_y >= y + across + kerf
            )
            if not beside and not above:
                yield f"two pieces of {board['key']} are not a kerf apart"


def fixed(plan):
    """{(board, entry, part): rectangles} of the pieces that were cut when the plan was made."""
    kerf, found = inches(plan["kerf"]), {}
    for board in plan["boards"]:
        parts, _ = sawn(board, kerf)
        for piece in board["pieces"]:
            if piece.get("done"):
                key = board["key"], piece["entry"], piece["part"]
                found.setdefault(key, []).append(parts[piece["of"]])
    return {key: sorted(those) for key, those in found.items()}
