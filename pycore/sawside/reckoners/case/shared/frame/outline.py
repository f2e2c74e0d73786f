"""How large a face frame is outside, and how wide its outer members are. Inches, exact."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal


@dataclass(frozen=True, slots=True)
class Outline:
    """The outside of a frame, the widths of its stiles and rails, and the `foot` under it.

    `foot` is how far its end stiles run on below the bottom rail. `insides` are how far the left
    and right stile go past the inside of the case's sides, less than 0 where a side shows; `lip` is
    the same of the bottom rail above the case's bottom. None without a case.
    """

    width: Fraction
    height: Fraction
    left: Fraction
    right: Fraction
    top: Fraction
    bottom: Fraction
    foot: Fraction = Fraction(0)
    insides: tuple[Fraction, Fraction] | None = None
    lip: Fraction | None = None


def outline_of(given, show):
    """The `Outline` of a form; "impossible" where the frame misses the case that it covers."""
    top = _or(given.top_rail, given.stile)
    if given.size_of == "frame":
        left, right = (_or(each, given.stile) for each in (given.left_stile, given.right_stile))
        bottom = _or(given.bottom_rail, given.stile)
        return Outline(given.width, given.height, left, right, top, bottom)
    _check_top(given, show, top)
    pasts = left_past, right_past = pasts_of(given)
    stiles = (_stile(given, show, "left", left_past), _stile(given, show, "right", right_past))
    to_floor = given.stiles_run == "floor"
    bottom = _bottom_rail(given, show)
    return Outline(
        given.width + left_past + right_past,
        _height(given, show, to_floor),
        *stiles,
        top,
        bottom,
        given.kick if to_floor else Fraction(0),
        tuple(stile - past - given.side for stile, past in zip(stiles, pasts, strict=True)),
        given.kick + bottom - case_bottom(given),
    )


def _or(value, other):
    return other if value is None else value


def pasts_of(given):
    """How far the frame goes past the case at its left and at its right."""
    return given.left_past, _or(given.right_past, given.left_past)


def case_bottom(given):
    """From the floor to the top face of the case's bottom."""
    return _or(given.bottom_height, given.kick + given.side)


def _height(given, show, to_floor):
    high = given.height + given.top_past - (0 if to_floor else given.kick)
    if high <= 0:
        raise Refusal(
            "impossible",
            f"The toe kick is {show.text(given.kick)}, but the case is only "
            f"{show.text(given.height)} high.",
            "Enter a lower toe kick.",
            field="kick",
        )
    return high


def _stile(given, show, side, past):
    typed = getattr(given, f"{side}_stile")
    if typed is None and given.edge != "width":
        _check_reveal(given, show)
        return past + given.side + (given.reveal if given.edge == "past" else 0)
    stile = _or(typed, given.stile)
    if past >= stile:
        blank = side == "right" and given.right_past is None
        raise Refusal(
            "impossible",
            f"The frame goes {show.text(past)} past the case, but the {side} stile is only "
            f"{show.text(stile)} wide, so it misses the case.",
            f"Go less than {show.text(stile)} past the case, or use a wider stile.",
            field="left_past" if blank else f"{side}_past",
        )
    return stile


def _check_top(given, show, top):
    if given.top_past >= top:
        raise Refusal(
            "impossible",
            f"The frame goes {show.text(given.top_past)} past the top of the case, but the top "
            f"rail is only {show.text(top)} wide, so it misses the case.",
            f"Go less than {show.text(top)} past the top, or use a wider top rail.",
            field="top_past",
        )


def _check_reveal(given, show):
    if given.edge == "past" and given.reveal > given.stile:
        raise Refusal(
            "impossible",
            f"The stile would cover {show.text(given.reveal)} of the opening, more than a stile "
            f"of {show.text(given.stile)} is wide.",
            "Go less far past the side’s inside, or enter a wider stile.",
            field="reveal",
        )


def _bottom_rail(given, show):
    if given.bottom_rail is not None or given.bottom_edge == "width":
        return _or(given.bottom_rail, given.stile)
    top = case_bottom(given) + (given.lip if given.bottom_edge == "above" else 0)
    if top <= given.kick:
        raise Refusal(
            "impossible",
            f"The top of the case bottom is {show.text(case_bottom(given))} off the floor, and "
            f"the frame starts at the {show.text(given.kick)} toe kick: nothing is left for a "
            "bottom rail.",
            "Enter a lower toe kick, or the height of the case bottom’s top face.",
            field="bottom_height",
        )
    return top - given.kick
