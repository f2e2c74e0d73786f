"""Which wood a piece can come out of, by material and thickness: as it is, planed, or nearly."""

import re
from fractions import Fraction

AS_IT_IS, NEARLY, ANY_STICK = range(3)
"""How wood suits, from the best: as it is; a board once it is planed, or a sheet that is sold by a
thickness it falls short of; a stick of which nobody said how wide and thick it is."""

_SAME = Fraction(1, 64)
"""Inches that nobody planes off or adds: 19 mm is 3/4 (common practice, no source)."""

_MOST_PLANED = Fraction(1, 2)
"""Inches that are planed off at most, and no more than half: 1/2 in out of 4/4, 3/4 out of 5/4.
What is thicker is sawn apart (common practice, no source)."""

_NAMED = Fraction(3, 64)
"""Inches that a sheet may be off the thickness that it is sold by: 23/32 and 18 mm for 3/4, 5.2 mm
for 1/4 (PS 1, and common practice)."""

_WORDS = re.compile(r"\w+")
_CALLED = {"ply": "plywood", "chipboard": "particleboard"}
_GOODS = frozenset(("plywood", "mdf", "hardboard", "particleboard", "melamine", "osb"))


def how(wood, want):
    """How an offer or board suits a `Want`: `AS_IT_IS`, `NEARLY`, `ANY_STICK`, or None. A profile
    comes out of sticks, or out of boards that are not ripped for it."""
    if want.profile and wood.form != "stick" and not _is_of_its_size(wood, want):
        return None
    if wood.material and want.material and not is_one_wood(wood.material, want.material):
        return None
    if wood.form == "stick" and wood.width is None and want.width is not None:
        return ANY_STICK
    return _by_thickness(wood.form, wood.thickness, want.thickness)


def _is_of_its_size(wood, want):
    sizes = want.width, want.thickness
    return None not in sizes and (wood.width, wood.thickness) == sizes


def makes(form, thickness, asked):
    """Whether wood of a form and thickness makes pieces of the thickness that is asked for."""
    return _by_thickness(form, thickness, asked) is not None


def is_off(form, thickness, asked):
    """Whether a piece made of it is told apart from what was asked for: planed, or a little off."""
    if thickness is None or asked is None:
        return False
    return thickness != asked if form == "sheet" else abs(thickness - asked) > _SAME


def is_sheet_goods(material):
    """Whether a material is by its name what sheets are made of."""
    return bool(_words(material) & _GOODS)


def is_one_wood(one, other):
    """Whether two names mean one wood: the same words, or one of them only says more: "Oak, white"
    and "white oak", "plywood" and "birch ply"; but no board is what its veneer is called."""
    words, others = _words(one), _words(other)
    same_goods = words & _GOODS == others & _GOODS
    return words == others or (
        same_goods and bool(words and others) and _one_in_other(words, others)
    )


def _one_in_other(words, others):
    return words <= others or others <= words


def _words(text):
    return frozenset(_CALLED.get(word, word) for word in _WORDS.findall(text.casefold()))


def _by_thickness(form, thickness, asked):
    if thickness is None or asked is None:
        return AS_IT_IS
    off = thickness - asked
    if form == "sheet":
        return AS_IT_IS if not off else NEARLY if abs(off) <= _NAMED else None
    if abs(off) <= _SAME:
        return AS_IT_IS
    most = min(_MOST_PLANED, thickness / 2)
    return NEARLY if form == "board" and 0 < off <= most else None
