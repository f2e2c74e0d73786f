"""Angles laid out by lengths: rise over run, and a spacer under one end of a bar on two pins."""

from sawside.geometry.angles import arcsine, arctangent, sine, tangent


def rise_of(run, angle):
    """How far square over from the end of `run` the line lies: run x tan(angle). Below 90."""
    return run * tangent(angle)


def angle_of_rise(run, rise):
    """The angle that a rise over a run makes, in degrees."""
    return arctangent(rise / run)


def spacer_of(bar, angle):
    """The spacer under one of two equal pins, `bar` apart from center to center: bar x sin."""
    return bar * sine(angle)


def angle_of_spacer(bar, spacer):
    """The angle that a spacer makes; ValueError where it is longer than the bar."""
    return arcsine(spacer / bar)


def worst(angle_of, length, off, angle):
    """How far the angle is off at most when the length is `off` more or less, from 0 up."""
    ends = (abs(angle_of(max(length + way * off, 0)) - angle) for way in (1, -1))
    return max(ends)
