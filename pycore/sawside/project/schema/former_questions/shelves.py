"""Questions of the subject shelves that became part of another one."""

from sawside.project.schema.former_questions.became import Became


def _strength(solve, **blank):
    return Became("shelf_strength", {"solve": solve}, blank=blank)


def _layout(layout):
    return Became("shelf_layout", {"layout": layout})


MERGED: dict[str, Became] = {
    "shelf_sag": _strength("sag"),
    "longest_shelf_span": _strength("span"),
    "thinnest_shelf": _strength("thickness"),
    "heaviest_shelf_load": _strength("load"),
    "shelf_edge_strip": _strength("strip", strip="front"),
    "equal_shelf_spacing": _layout("equal"),
    "graduated_shelf_spacing": _layout("graduated"),
    "shelves_to_fit": _layout("fit"),
    "shelves_around_a_fixed_one": _layout("fixed"),
}
"""By the key of the question of before."""
