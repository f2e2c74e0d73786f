"""What the cutting plan of a project buys, as a table; it is not taken back."""

from sawside.errors import Refusal
from sawside.lengths.display import decimal_text
from sawside.lengths.show import Show
from sawside.project.files.tables.csv_text import written
from sawside.project.plans.board import boards_of
from sawside.project.plans.buying import bought_of
from sawside.project.plans.make import plan
from sawside.project.plans.words import stock_text
from sawside.settings.settings import read_settings

HEADER = (
    "Count",
    "What",
    "Material",
    "Length in",
    "Width in",
    "Thickness in",
    "Price each",
    "Price total",
)


def out(document):
    """A row for each kind of board to buy: of the plan that is kept, else of one that is made."""
    kept = document.get("plan") or (plan(document)["act"] or {}).get("plan")
    show = Show(read_settings(document["settings"]))
    boards = boards_of(kept) if kept else []
    return written(HEADER, (_row(*each, show) for each in bought_of(boards)))


def _row(number, board, show):
    sizes = (board.length, board.width, board.thickness)
    total = None if board.price is None else board.price * number
    return (
        str(number),
        f"{board.form}, {stock_text(board, show)}",
        board.material,
        *("" if size is None else decimal_text(size).rstrip("…") for size in sizes),
        *("" if price is None else _cents(price) for price in (board.price, total)),
    )


def _cents(price):
    return f"{round(price * 100) // 100}.{round(price * 100) % 100:02d}"


def taken(_document, _text):
    """Refused: a plan is made of pieces and wood, not of what it buys."""
    raise Refusal(
        "message",
        "A buy list can’t be imported.",
        "Change the wood to buy in the project, then plan again.",
        field="text",
    )
