"""What was filled in as a request to the planner, and what no plan can do."""

from fractions import Fraction

from sawside.boards.request import Piece, Request, Stock
from sawside.boards.slants import alone, shorter_edge
from sawside.errors import Refusal
from sawside.geometry.miter import half_corner
from sawside.lengths.real import Real
from sawside.reckoners.boards.shared.bad_stretches import bad_stretches
from sawside.reckoners.boards.shared.stick_fields import MOST_PIECES
from sawside.reckoners.boards.shared.stick_groups import stock_text
from sawside.reckoners.boards.shared.under_kerf import refuse_under_kerf
from sawside.reckoners.miters.shared.corner_field import corner_of

FLATTEST_CORNER = 179
SQUARE = Fraction(0)


def request_of(given, show):
    """The `Request`; refuses too many pieces, prices for some lengths only, and what can't be."""
    pieces = tuple(_pieces(given, show))
    if (number := sum(piece.count for piece in pieces)) > MOST_PIECES:
        raise Refusal(
            "range",
            f"That’s {number:,} pieces. The most is {MOST_PIECES}.",
            "Split the list and plan each part by itself.",
            field="pieces" if given.pieces else "mitered",
        )
    sold = [(given.sold, given.price), *((row.length, row.price) for row in given.other or ())]
    if len({price is None for _, price in sold}) > 1:
        raise Refusal(
            "conflict",
            "Some stock lengths have a price and some don’t.",
            "Enter a price for every length, or for none.",
            field="price" if given.price is None else "other",
        )
    hand = (_on_hand(at, row, number, show) for at, row in enumerate(given.on_hand or ()))
    request = Request(
        pieces,
        tuple(hand),
        tuple(Stock(exact(length, show), None, price) for length, price in sold),
        exact(given.kerf, show),
        exact(given.trim, show),
        exact(given.width or SQUARE, show),
        given.profile != "molding",
        exact(given.least, show),
    )
    lengths = [(_called(given, place), piece.length) for place, piece in enumerate(pieces)]
    refuse_under_kerf(lengths, request.kerf, show)
    _refuse_crossed(given, request, show)
    _refuse_too_long(given, request, show)
    return request


def _on_hand(at, row, number, show):
    """A row of sticks on hand; more than there are pieces are no use."""
    length = exact(row.length, show)
    try:
        bad = bad_stretches(row.bad or "", length, show, beyond=True)
    except Refusal as refusal:
        refusal.message, refusal.field = f"Stick {at + 1}: {refusal.message}", None
        raise refusal.of("on_hand", row=at, part="bad") from None
    return Stock(length, min(row.count, number), bad=bad)


def exact(length, show):
    """A length as a fraction; one that is none is what the tape says of it."""
    return show.mark(length) if isinstance(length, Real) else Fraction(length)


def miter_of(given):
    """What the saw is set to for the mitered ends, in degrees from square, or None."""
    corner = corner_of(given, "corner", most=FLATTEST_CORNER)
    return None if corner is None else half_corner(corner)


def _pieces(given, show):
    for row in given.pieces or ():
        yield Piece(exact(row.length, show), row.count, row.name or "")
    miter = miter_of(given)
    for row in given.mitered or ():
        left, right = {"both": (miter, miter), "one": (SQUARE, miter), "parallel": (miter, -miter)}[
            row.miters
        ]
        yield Piece(exact(row.length, show), row.count, row.name or "", left, right)


def _refuse_crossed(given, request, show):
    """A piece so short that its miters run into each other."""
    for piece in request.pieces:
        if shorter_edge(piece, request.width).low <= 0:
            number = request.pieces.index(piece) - len(given.pieces or ())
            raise Refusal(
                "impossible",
                f"Mitered piece {number + 1} is {show.brief(piece.length)} along its longer edge: "
                "its miters leave nothing of the other one.",
                "Check its length, the stick width and the corner.",
                field="mitered",
            )


def _refuse_too_long(given, request, show):
    longest = max(stock.length for stock in (*request.on_hand, *request.to_buy))
    if longest <= 2 * request.trim:
        raise Refusal(
            "impossible",
            f"The end trims take all of a stick {stock_text(show, longest)} long.",
            "Trim less, or use longer sticks.",
            field="trim",
        )
    bought = [request.usable(stock) for stock in request.to_buy]
    stretches = [end - start for stock in request.on_hand for start, end in request.sections(stock)]
    usable = max((*bought, *stretches))
    for place, piece in enumerate(request.pieces):
        if alone(piece, request.width).up > usable:
            mitered = place >= len(given.pieces or ())
            raise Refusal(
                "impossible",
                f"{_called(given, place)} {_takes(show, piece, request)} "
                f"gives {show.brief(usable)}.",
                "Add a longer stock length, or splice the piece.",
                field="mitered" if mitered else "pieces",
            )


def _takes(show, piece, request):
    """How long a piece is, or how much of a stick it takes where its slants make that more."""
    takes = alone(piece, request.width).up
    if takes > piece.length:
        of_stick = show.brief(takes, "reach")
        return f"takes {of_stick} of a stick from tip to tip, and the longest one"
    return f"is {show.brief(piece.length)}, and the longest stick"


def _called(given, place):
    """What a piece of the request is called in the form: "Piece 2", "Mitered piece 1"."""
    square = len(given.pieces or ())
    return f"Piece {place + 1}" if place < square else f"Mitered piece {place - square + 1}"
