"""The base that a case is lifted onto once it is upright."""

from sawside.reckoners.fields import length

SEPARATE_KICK = length(
    "kick",
    "Separate toe kick",
    help="The height of a base that you set first. It counts in the case height.",
    least="1/4 in",
    blank_means="The case is raised in one piece.",
    in_short="separate kick {}",
)
