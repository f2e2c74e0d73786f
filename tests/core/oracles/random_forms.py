"""Random lengths, and how what is asked of them is typed into a form."""

from fractions import Fraction
from math import ceil, floor

from tests.core.asking import inches

TRIES = 60


def number(random, least, most, parts=64):
    """A random length on a mark of 1/`parts`."""
    return Fraction(random.randint(int(least * parts), int(most * parts)), parts)


def length(random, least, most):
    """A random length, mostly on a mark."""
    parts = random.choice((8, 16, 32, 64, 7))
    return Fraction(random.randint(ceil(least * parts), floor(most * parts)), parts)


def typed(asked, numbers=()):
    """What is asked, {key: value}, as it is typed: a fraction as inches, save those of `numbers`,
    which have another unit or none."""
    return {
        key: [inches(one) for one in each]
        if isinstance(each, list)
        else inches(each)
        if isinstance(each, Fraction) and key not in numbers
        else str(float(each) if isinstance(each, Fraction) else each)
        for key, each in asked.items()
    }


def check_answered(random, ask_at_random, answer, check):
    """What is wrong with the first random form that is not refused as impossible, as sentences.

    `ask_at_random` gives what is asked, `answer` what is said to it, `check` takes both.
    """
    for _ in range(TRIES):
        asked = ask_at_random(random)
        said = answer(asked)
        if said["ok"]:
            return check(asked, said)
        if said["error"]["kind"] != "impossible":
            return [f"{said['error']}: {asked}"]
    return [f"all of {TRIES} forms were refused"]
