"""What a plan buys: alike boards once, with what they cost, as data, as a text and as a table."""

from sawside.lengths.words import counted
from sawside.project.plans.words import stock_text
from sawside.reckoners.boards.shared.amounts import money


def bought_of(boards):
    """[(how many, one of them)] of the boards to buy, alike ones once."""
    kinds = {}
    for board in boards:
        if board.bought:
            kinds.setdefault(board.like, []).append(board)
    return [(len(those), those[0]) for those in kinds.values()]


def buy_told(boards, show):
    """The buy list, as the contract of `ToBuy`."""
    return [
        {
            "count": number,
            "said": f"{counted(number, board.form)}, {stock_text(board, show)}",
            "each": "" if board.price is None else money(board.price),
            "cost": "" if board.price is None else money(board.price * number),
        }
        for number, board in bought_of(boards)
    ]


def cost_told(boards):
    """What all of it costs; "" where something has no price."""
    prices = [board.price for board in boards if board.bought]
    return "" if not prices or None in prices else money(sum(prices))


def list_text(buy, cost, waste):
    """The buy list as a plain text to be shared, with what it costs and how much of it is waste."""
    lines = [each["said"] + (f": {each['cost']}" if each["cost"] else "") for each in buy]
    more = [f"Total {cost}"] * bool(cost) + [waste] * bool(waste)
    return "\n".join(["To buy", *lines, *more]) if buy else ""
