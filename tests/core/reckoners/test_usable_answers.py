"""No answer comes out negative, or as nothing, where a shop can't use it: random forms of all."""

import random

import pytest

import sawside
from tests.core.door.random_forms import DESCRIBED, random_form

SIGNED = {("shelf_length", "change")}
"""Differences that are told with their sign."""
MAY_BE_NOTHING = {
    "apart",
    "difference",
    "neighbors",
    "left_allowance",
    "right_allowance",
    "left_setting",
    "right_setting",
    "left_set_back",
    "right_set_back",
    "growth",
    "shrinkage",
    "away",
    "towards",
    "pin_away",
    "pin_towards",
    "proud",
    "short",
    "whole",
    "change",
    "last_heel",
    "last_toe",
    "left_over",
    "over",
    "extra",
    "off",
    "gap",
    "hook",
    "end",
    "rest",
    "sag_back",
}
"""Differences, allowances and changes, of which there may be none; the sag of an edge on a
cleat."""
COUNTED = {"shelf_count", "below", "above", "pieces", "cuts", "sticks"}
"""Counts that may be 0: no shelf between bottom and top, no piece that fits."""
AT_AN_END = {
    ("tape_marks", "mark"),
    ("fractions", "mark"),
    ("dado_layout", "lower"),
    ("shelf_strength", "strip_height"),
    ("shelf_layout", "marks"),
    ("molding_run", "short_sides"),
    ("crown", "bottoms"),
    ("how_many_fit", "left"),
    ("equal_parts", "marks"),
    ("space", "strips"),
    ("carcass", "kick_height"),
    ("carcass", "recess"),
    ("getting_it_in", "beside"),
    ("getting_it_in", "over"),
    ("face_frame", "covers"),
    ("face_frame", "lip"),
    ("doors", "gaps"),
    ("doors", "panel_gap"),
    ("door_swing", "square_gap"),
    ("door_swing", "opens"),
}
"""Places from which is measured, a strip that isn't needed or runs out to nothing, the small end of
a self-return, what just goes through a doorway, what is flush, the kick of a case without one."""


@pytest.mark.parametrize("question", DESCRIBED.values(), ids=lambda each: each["key"])
def test_answers_are_lengths_and_counts_that_a_shop_can_use(question):
    rng, key = random.Random(f"answers of {question['key']}"), question["key"]
    for _ in range(90):
        values = random_form(rng, question)
        settings = {"mark": rng.choice(("1/4", "1/16", "1/64", "1 mm"))}
        said = sawside.handle(
            {"do": "reckon", "reckoner": key, "values": values, "settings": settings}
        )
        assert said["ok"] or said["error"]["kind"] != "internal", said
        for answer in said["answers"] if said["ok"] else ():
            for item in answer.get("items", [answer]):
                if item["kind"] in ("length", "count") and (key, answer["key"]) not in SIGNED:
                    _check(key, answer["key"], item, values)


def _check(key, answer, item, values):
    told = item["text"].removeprefix("≈ ")
    assert not told.startswith("−"), (key, answer, told, values)
    nothing = item.get("exact", told) == "0" or told == "0"
    allowed = answer in MAY_BE_NOTHING | COUNTED or (key, answer) in AT_AN_END
    assert not nothing or allowed, (key, answer, told, values)
