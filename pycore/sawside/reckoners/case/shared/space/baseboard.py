"""The notches of a case around the baseboard of its space.

A strip holds a side off its wall already, so a side is notched only by what the baseboard stands
out past the strip; the back goes to the wall, and is notched by all of it.
"""

from fractions import Fraction

from sawside.lengths.words import listed


def side_notches(given, found):
    """[(the strip at a wall, how deep its side is notched in exact inches)], of the sides that the
    baseboard reaches."""
    if not given.baseboard or given.at_baseboard != "notch":
        return []
    deep = [(strip, given.baseboard - strip.bottom) for strip in found.strips]
    return [(strip, each) for strip, each in deep if each > 0]


def back_notch(given, found):
    """How deep the back is notched, exact: by what a gap behind it doesn't leave; 0 for not."""
    if not given.baseboard or given.at_baseboard != "notch":
        return Fraction(0)
    gap = found.back.takes if found.back else Fraction(0)
    return max(given.baseboard - gap, Fraction(0))


def notches(given, show, found):
    """[(where, how deep as it's cut)], the back first; none where the case isn't notched."""
    sides, back = side_notches(given, found), back_notch(given, found)
    return ([("Back", show.rounded(back, "reach"))] if back else []) + [
        (f"{strip.side.capitalize()} side", show.rounded(deep, "reach")) for strip, deep in sides
    ]


def notch_lines(given, show, found):
    """The working of each side's notch."""
    for strip, deep in side_notches(given, found):
        told = show.equals(show.rounded(deep, "reach"))
        yield (
            f"{strip.side.capitalize()} side’s notch: {show.number(given.baseboard)} − "
            f"{show.number(strip.bottom)}{told}"
        )


def notch_cautions(given, show, found):
    """How deep to notch, how high, and which side is too thin for it."""
    told = notches(given, show, found)
    if not told:
        return
    texts = [f"the {where.lower()} {show.brief(deep)}" for where, deep in told]
    if len(told) == 3 and told[1][1].mark == told[2][1].mark:
        texts = [texts[0], f"both sides {show.brief(told[1][1])}"]
    yield (
        f"Notch {listed(texts)}. Cut the notches a little higher than the baseboard is, or the "
        f"case won’t go in.{_bowed(found, told[1:])}{_thin(show, told[1:])}"
    )


def _bowed(found, sides):
    if not (sides and found.walls.uneven):
        return ""
    return " The walls may bow, so measure the gap at the floor before you notch a side."


def _thin(show, sides):
    if not sides:
        return ""
    left = Fraction(60, 254) if show.settings.display == "mm" else Fraction(1, 4)
    least = max(deep.mark for _, deep in sides) + left
    return (
        f" Don’t notch a side thinner than {show.brief(least, 'reach')}: too little of it is left "
        "(shop practice). Keep the case clear of the baseboard, or cut the baseboard away."
    )
