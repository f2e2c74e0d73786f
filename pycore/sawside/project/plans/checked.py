"""What is known of plans that buy less than the one that was made."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.words import counted
from sawside.reckoners.boards.shared.amounts import money


@dataclass(frozen=True)
class Checked:
    """How much over the best the boards with these keys can be: dollars where `priced`, else
    boards."""

    boards: frozenset
    over: Fraction
    priced: bool


def checked_of(plan):
    """Every `Checked` of a checked plan; none of one that was made before there were any."""
    return [
        Checked(frozenset(each["boards"]), Fraction(each["over"]), "priced" in each)
        for each in plan.get("checked", ())
    ]


def how_good(boards, checked):
    """What is known of plans that buy less than these boards; "" where nobody looked."""
    bought = [board for board in boards if board.bought]
    if not bought:
        return "Nothing to buy"
    keys = {board.key for board in bought}
    those = [each for each in checked if each.boards & keys]
    if not keys <= {key for each in those for key in each.boards}:
        return ""
    over = sum(each.over for each in those)
    if any(each.priced for each in those):
        return f"At most {money(over)} over the best" if over else "Nothing costs less"
    too_many = counted(-(-over // 1), bought[0].form)
    return f"At most {too_many} too many" if over else "Fewer can’t do it"
