"""What the questions about slots share: how far each runs from its fastener, and its answers.

Two ways round. A screw that bites in the top moves with it, along a slot in the cleat or apron,
which stays: the slot runs outward for what the top grows. A pin in a breadboard end stays, and the
slot in the tongue moves along it: that slot runs outward for what the top shrinks.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import Exact
from sawside.reckoners.shared.numbered import numbered
from sawside.wood.numbers import number_text, percent_text, size_text


@dataclass(frozen=True, slots=True)
class Slot:
    """The slot of one fastener: how far it runs from it, away from the fixed line and towards it.

    Inches, beyond the hole that the fastener fills now.
    """

    away: Exact
    towards: Exact
    shank: Fraction

    @property
    def length(self):
        """From end to end."""
        return self.shank + self.away + self.towards


def slot_of_screw(board, distance, shank):
    """The slot, in what stays, of a screw in the moving top, so far from the line that is fixed."""
    return Slot(board.growth(distance), board.shrinkage(distance), shank)


def slot_of_pin(board, distance, pin):
    """The slot, in the moving tongue, of a pin that stays so far from the line that is fixed.

    It is cut now and moves with the wood, ends and all: each end is where it comes to touch the
    pin's side at the wettest or at the driest. On the line, where the tongue is
    glued, it is a plain hole.
    """
    if not distance:
        return Slot(Fraction(0), Fraction(0), pin)
    inner, outer = distance - pin / 2, distance + pin / 2
    wettest, driest = board.grown, 1 - board.shrinkage(Fraction(1))
    towards = inner - inner / (wettest if inner > 0 else driest)
    return Slot(outer / driest - outer, towards, pin)


def slot_length(slot, show):
    """How long a slot is cut, on its mark: one that is shorter would split the wood."""
    return show.rounded(slot.length, "reach")


def slot_texts(slot, show):
    """The same in a drawing, with how far it runs in, and out.

    All three are rounded up, which is said beside the name: "(up)" between "in" and "out" would
    look like a way to go.
    """
    ways = (on_fine_marks(each, show, "reach") for each in (slot.towards, slot.away))
    return [show.bare(each) for each in (slot_length(slot, show), *ways)]


def slot_answers(slots, show, away, towards):
    """The answers about slots: each whole, and its two ways from the fastener's place now.

    `away` and `towards` are the keys of those: out from the line that is fixed, and towards it.
    """
    told = {
        "slots": [slot_length(slot, show) for slot in slots],
        away: [on_fine_marks(slot.away, show, "reach") for slot in slots],
        towards: [on_fine_marks(slot.towards, show, "reach") for slot in slots],
    }
    return {key: numbered("Fastener", values) for key, values in told.items()}


def _ends_of_year(board):
    return max(board.year.high, board.now), min(board.year.low, board.now)


def screw_lines(slots, distances, board, show):
    """The lines of working of the slots of screws."""
    wettest, driest = _ends_of_year(board)
    for at, (slot, distance) in enumerate(zip(slots, distances, strict=True), 1):
        yield (
            f"Fastener {at}, {show.number(distance)} from the fixed line: "
            f"{show.number(slot.shank)} + {show.number(distance)} × "
            f"{number_text(board.coefficient, 5)} × ({percent_text(wettest, 3)} − "
            f"{percent_text(driest, 3)}) = {size_text(slot.length, show)}"
        )


def pin_lines(slots, distances, board, show):
    """The lines of working of the slots of pins: where they touch a pin's two sides."""
    now, (wettest, driest) = percent_text(board.now, 3), _ends_of_year(board)
    each = number_text(board.coefficient, 5)
    wide = number_text(board.grown, 5)
    narrow = number_text(1 - board.shrinkage(Fraction(1)), 5)
    grown, shrunk = f"({percent_text(wettest, 3)} − {now})", f"({now} − {percent_text(driest, 3)})"
    yield f"At its wettest, times its width now: 1 + {each} × {grown} = {wide}"
    yield f"At its driest, times its width now: 1 − {each} × {shrunk} = {narrow}"
    for at, (slot, distance) in enumerate(zip(slots, distances, strict=True), 1):
        if not distance:
            pin = fine_text(slot.shank, show)
            yield f"Fastener {at} is at the center, where the end is glued: a plain {pin} hole"
            continue
        inner, outer = distance - slot.shank / 2, distance + slot.shank / 2
        divisor = wide if inner > 0 else narrow
        inward, outward = (size_text(way, show) for way in (slot.towards, slot.away))
        inner, outer, pin = (show.number(each) for each in (inner, outer, slot.shank))
        yield f"Fastener {at}, toward the center: {inner} − {inner} ÷ {divisor} = {inward}"
        yield f"Fastener {at}, toward the edge: {outer} ÷ {narrow} − {outer} = {outward}"
        yield f"Fastener {at}, slot: {pin} + {inward} + {outward} = {size_text(slot.length, show)}"
