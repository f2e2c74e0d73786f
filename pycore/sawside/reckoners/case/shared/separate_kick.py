"""The base that a case is lifted onto once it is upright."""

from fractions import Fraction

from sawside.errors import impossible
from sawside.reckoners.fields import length

SEPARATE_KICK = length(
    "kick",
    "Separate toe kick",
    help="The height of a base that you set first. It counts in the case height.",
    least="1/4 in",
    blank_means="The case is raised in one piece.",
    in_short="separate kick {}",
)


def raised_of(given, show, height):
    """(how high that is which is tipped up of a case so high, its separate kick or 0), exact
    inches; "impossible" where the kick leaves nothing."""
    kick = given.kick or Fraction(0)
    if kick >= height:
        raise impossible(
            f"A toe kick of {show.text(kick)} leaves nothing of a case {show.text(height)} high.",
            "Enter a lower toe kick.",
            "kick",
        )
    return height - kick, kick
