"""A strip between a case that is plumb and a wall, by the gaps measured at heights. Exact inches.

Held with its outer edge against the wall, upright, the strip touches where the gap is smallest,
and is short of its place by its width less that gap and its lap: a compass set to that draws, at
every height, the line to cut to, and leaves gap + lap of the strip there.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.fine import limit_text
from sawside.lengths.marks import Rounded


@dataclass(frozen=True, slots=True)
class Scribed:
    """`gaps` are (height, gap) from the bottom up, `lap` is what the strip has behind or before
    the case, `wide` what it is ripped to."""

    gaps: tuple[tuple[Fraction, Fraction], ...]
    lap: Fraction
    wide: Rounded

    @property
    def smallest(self):
        """The gap where the wall is nearest."""
        return min(gap for _, gap in self.gaps)

    @property
    def widest(self):
        """The gap where the wall is farthest."""
        return max(gap for _, gap in self.gaps)

    @property
    def compass(self):
        """What the compass or scribing block is set to."""
        return self.wide.mark - self.lap - self.smallest

    def left(self, gap):
        """What is left of the strip at such a gap."""
        return gap + self.lap

    @property
    def least(self):
        """What is left of it where it's narrowest."""
        return self.left(self.smallest)


def scribed_of(given, show):
    """The `Scribed` strip of a form; "impossible" where it can't reach the wall."""
    steps = len(given.gaps) - 1
    if steps < 1:
        raise Refusal(
            "impossible",
            "One gap doesn’t show how the wall runs.",
            "Measure the gap at the bottom, the middle and the top.",
            field="gaps",
        )
    gaps = tuple((given.long * at / steps, gap) for at, gap in enumerate(given.gaps))
    needed = max(gap for _, gap in gaps) + given.lap
    if needed == 0:
        raise Refusal(
            "impossible",
            "There’s no gap, so there’s nothing to scribe.",
            "Enter the gap where there is one, or a lap.",
            field="gaps",
        )
    if given.strip is not None and given.strip < needed:
        raise Refusal(
            "impossible",
            f"A strip {show.text(given.strip)} wide doesn’t reach the wall where the gap is "
            f"widest: it takes {show.text(needed)} with its lap.",
            f"Use one {limit_text(needed, show, 'reach')} wide or more.",
            field="strip",
        )
    wide = needed + given.spare if given.strip is None else given.strip
    return Scribed(gaps, given.lap, show.rounded(wide, "reach"))
