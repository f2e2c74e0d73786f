"""A tape held at one of its lines instead of its hook: the line, and the tape that it is on."""

from sawside.lengths.display import decimal_text
from sawside.reckoners.fields import length, own_tape


def line_field(label, **more):
    """The line of the tape that something is measured from."""
    return length("start", label, default="1 in", metric="100 mm", most="10 ft", **more)


STRETCHED = own_tape("tape", "Tape", help="Corrected for stretch. The hook doesn’t matter here.")


def stretch_of(given):
    """True inches in each inch of the tape."""
    return given.tape.scale if given.tape else 1


def stretch_lines(given, show, number, sign, result):
    """The working, `number` × or ÷ the scale by `sign`; none of a tape that reads true.

    `result` is told as it follows: "= 31 5/8".
    """
    scale = stretch_of(given)
    if scale != 1:
        yield (
            f"{given.tape.name}: each inch is {decimal_text(scale)}; "
            f"{show.number(number)} {sign} {decimal_text(scale)}{result}"
        )
