"""Every face frame laid out again from its cut list fills its outside once."""

from fractions import Fraction

import pytest
from asking import exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.laid_out_frame import (
    KEY,
    by_name,
    covered_once,
    laid_out,
    named,
    spans_there,
    spans_told,
    through_total,
)

MARK = Fraction(1, 32)
"""What half a sixteenth may be off in a place that is told."""


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


columns = st.lists(st.tuples(st.integers(1, 3), st.none() | small(2, 5)), min_size=1, max_size=4)
"""Middle rails of columns of their own: which one, and the opening above, None for its share."""

cuts = st.integers(0, 3) | st.lists(small(2, 5), min_size=1, max_size=3)
"""Openings across or down: a count of middle members, or a list of openings."""


@settings(max_examples=200)
@given(forms, cuts, cuts | columns)
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
        if not isinstance(cut, int) and isinstance(cut[0], tuple):
            most = 1 + (across if isinstance(across, int) else len(across))
            values |= {"rows": "columns", "column_rails": _rails(cut, most)}
            continue
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
    if form["joint"] == "through":
        long = through_total(wood, 1 + len(said["by_key"]["opening_widths"]["items"]))
        assert 0 <= exact(said["by_key"]["total"]) - long < 2 * MARK
    _check_spans(form, said, wood)
    drawn = [
        (*shape["points"][0], *shape["points"][2])
        for shape in said["drawing"]["shapes"]
        if shape.get("role") == "stock"
    ]
    assert len(drawn) == len(wood)
    for box in wood:
        assert any(each == pytest.approx(tuple(map(float, box)), abs=1e-3) for each in drawn)


def _rails(rails, most):
    """The rows of a form, in columns that are there."""
    return [
        {"column": str(min(column, most)), "opening": "" if opening is None else f"{opening} in"}
        for column, opening in rails
    ]


def _check_spans(form, said, wood):
    """Each stile can be laid out from its list alone: what meets it is where it is."""
    parts = {key: part for part in said["parts"] for key in named(part["name"])}
    left, right, *others = wood
    middle = [each for each in others if each[3] - each[1] == _long(said) and each[0] > left[2]]
    for stile, name, side in ((left, "Left stile", "right"), (right, "Right stile", "left")):
        part = parts.get((name, None)) or parts["Stile", None]
        _check_edge(part, "the inside edge", spans_there(wood, stile, side), 0)
    for number, stile in enumerate(middle, 1):
        part = parts.get(("Middle stile", number)) or parts["Middle stile", None]
        tenon = (exact(part["length"]) - _long(said)) / 2
        if tenon and form["joint"] == "through":
            tenon = exact(parts["Bottom rail", None]["width"])
        both = any(line.startswith("On both edges") for line in part["about"])
        for side in ("left", "right"):
            edge = "both edges" if both else f"the {side} edge"
            _check_edge(part, edge, spans_there(wood, stile, side), tenon)


def _long(said):
    """The length of the middle stiles between their shoulders; None without any."""
    told = by_name(said, "stiles")
    told |= by_name(said, "shoulders") if "shoulders" in said["by_key"] else {}
    return next((long for (name, _), long in told.items() if name == "Middle stile"), None)


def _check_edge(part, edge, there, tenon):
    told = [(start, end) for _, start, end in spans_told(part, edge)]
    wanted = [(start + tenon, end + tenon) for start, end in there]
    assert len(told) == len(wanted), (part["name"], edge, told, wanted)
    for one, other in zip(told, wanted, strict=True):
        assert all(abs(each - true) <= MARK for each, true in zip(one, other, strict=True))


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
