"""Every face frame laid out again from its cut list fills its outside once."""

import pytest
from asking import reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.laid_out_frame import KEY, by_name, covered_once, laid_out


def small(low, high):
    return st.fractions(min_value=low, max_value=high, max_denominator=16)


forms = st.fixed_dictionaries(
    {
        "size_of": st.sampled_from(["case", "frame"]),
        "width": small(30, 70),
        "height": small(30, 90),
        "kick": small(0, 4),
        "side": small("1/2", 1),
        "edge": st.sampled_from(["width", "flush", "past"]),
        "reveal": small(0, "3/4"),
        "left_past": small(0, "3/4"),
        "right_past": small(0, "3/4"),
        "top_past": small(0, "3/4"),
        "stiles_run": st.sampled_from(["kick", "floor"]),
        "bottom_edge": st.sampled_from(["width", "flush", "above"]),
        "lip": small(0, "3/4"),
        "stile": small(1, 3),
        "left_stile": st.none() | small(1, 3),
        "middle_stile": st.none() | small(1, 3),
        "top_rail": st.none() | small(1, 4),
        "bottom_rail": st.none() | small(1, 4),
        "middle_rail": st.none() | small(1, 3),
        "middle_stiles_run": st.sampled_from(["between", "through"]),
        "joint": st.sampled_from(["screws", "dowels", "tenon", "through"]),
        "tenon": small("1/8", "3/8"),
    }
)


cuts = st.integers(0, 3) | st.lists(small(2, 5), min_size=1, max_size=3)
"""Openings across or down: a count of middle members, or a list of openings."""


@settings(max_examples=200)
@given(forms, cuts, cuts)
def test_the_parts_of_a_frame_fill_its_outside_around_its_openings(form, across, down):
    """Laid out again in exact rationals: no overlap, no gap, openings and toe kick left free."""
    values = {
        key: each if isinstance(each, str) else f"{each} in"
        for key, each in form.items()
        if each is not None
    }
    for cut, kind, count, listed in (
        (across, "bays", "middle_stiles", "widths"),
        (down, "rows", "middle_rails", "heights"),
    ):
        equal = isinstance(cut, int)
        values[kind] = "equal" if equal else "given"
        values[count if equal else listed] = str(cut) if equal else [f"{each} in" for each in cut]
    case = form["size_of"] == "case"
    said = reckon(KEY, **values)
    wide, high = form["width"], form["height"]
    foot = form["kick"] if case and form["stiles_run"] == "floor" else 0
    if case:
        wide += form["left_past"] + form["right_past"]
        high += form["top_past"] - (form["kick"] if form["stiles_run"] == "kick" else 0)
    through = form["middle_stiles_run"] == "through"
    wood, openings = laid_out(said, through=through, foot=foot)
    space = [(wood[0][2], high - foot, wood[1][0], high)] if foot else []
    assert covered_once((0, 0, wide, high), [*wood, *openings, *space])
    assert len(wood) == sum(part["count"] for part in said["parts"])
    _check_tenons(form, said)
    drawn = [
        (*shape["points"][0], *shape["points"][2])
        for shape in said["drawing"]["shapes"]
        if shape.get("role") == "stock"
    ]
    assert len(drawn) == len(wood)
    for box in wood:
        assert any(each == pytest.approx(tuple(map(float, box)), abs=1e-3) for each in drawn)


def _check_tenons(form, said):
    """What is cut is longer than between shoulders by the stub at both ends, or not at all."""
    cut = by_name(said, "stiles") | by_name(said, "rails")
    between = by_name(said, "shoulders") if "shoulders" in said["by_key"] else {}
    more = {label: cut[label] - length for label, length in between.items()}
    if form["joint"] in ("screws", "dowels"):
        assert more == {}
    elif form["joint"] == "tenon":
        assert set(more.values()) == {2 * form["tenon"]}
        assert set(by_name(said, "rails")) <= set(more)
