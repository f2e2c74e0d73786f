"""How near a shelf is to breaking, which a sag limit of one's own may say nothing of.

A published strength is the average of short tests of small clear samples. The weakest one in
twenty has 1 − 1.645 × 16% = 74% of it (Wood Handbook, Table 5-6, unchecked); for a load that stays,
and for safety, that is divided by 2.1 (ASTM D245, unchecked): about a third is left. For panels
the same third is common practice, no source.
"""

from fractions import Fraction

from sawside.wood.numbers import number_text

_LEAST_TIMES = 3
"""A published strength is at least this many times the stress of a shelf that is called fine."""
_MOST_SAG, _MOST_STRAIN = Fraction(1, 100), Fraction(1, 1000)
"""Of a material whose strength isn't known: a sag as a part of the span (common practice, no
source), and a stress as a part of the stiffness; the weakest on file, glulam, breaks at 3.2
thousandths, and a third of that is left as above."""
PAST_THEORY = Fraction(1, 20)
"""A sag of this part of the span is past what the theory holds for, and what anybody wants."""


def past_its_strength(case, shelf):
    """What is bent past its strength, or None."""
    return _less_than(1, case, shelf)[0]


def near_its_strength(case, shelf):
    """("plywood", "1.7") of what is bent to more than a third of its strength, or None.

    The number is how many times the stress its strength is.
    """
    made_of, times = _less_than(_LEAST_TIMES, case, shelf)
    return made_of and (made_of.spoken, number_text(times, 1))


def _less_than(least, case, shelf):
    """(what has not `least` times the strength that is asked of it, how many times), or Nones."""
    for (_, made_of), stress in zip(case.materials, shelf.stresses, strict=False):
        if made_of.strength and stress and made_of.strength.least <= stress * least:
            return made_of, made_of.strength.least / stress
    return None, None


def may_be_too_weak(case, shelf):
    """Whether a material of unknown strength is bent so far that nobody can call it fine."""
    parts = zip(case.materials, shelf.stresses, strict=False)
    unknown = [
        stress / made_of.stiffness.least for (_, made_of), stress in parts if not made_of.strength
    ]
    return bool(unknown) and (
        max(unknown) > _MOST_STRAIN or shelf.sag * case.factor > shelf.span * _MOST_SAG
    )


def strength_cautions(case, shelf):
    """What is told beside a shelf that is near breaking, or past what its sag is figured for."""
    if near_its_strength(case, shelf):
        yield (
            "This load bends the shelf to more than a third of its published strength. Boards "
            "vary, and one under a steady load breaks sooner than in a short test: use a thicker "
            "board, a shorter span or less weight."
        )
    elif may_be_too_weak(case, shelf):
        yield (
            "With no strength on file, nobody can say how near this shelf is to breaking. Get the "
            "bending strength from the maker’s data sheet, or keep the sag under 1/100 of the "
            "span (shop practice)."
        )
    if shelf.sag * case.creep > shelf.span * PAST_THEORY:
        yield (
            "Past 1/20 of the span the sag is only a sign that it’s far too much. The formulas "
            "hold for small sags."
        )
