"""What must go in is rounded down, what must reach is rounded up, whatever the person chose."""

import re
from fractions import Fraction

import pytest
from asking import ask, exact, reckon
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from projects import acts, answered, begun, view

from sawside.errors import Refusal, Refusals
from sawside.lengths.marks import GRIDS, MUSTS, Rounded, exact_of, told_mark
from sawside.lengths.show import Show
from sawside.reckoners import RECKONERS
from sawside.reckoners.declaration import Answer
from sawside.reckoning.answers import part_told, told
from sawside.reckoning.reckon import reckoning_told
from sawside.reckoning.values import read_values
from sawside.settings.settings import CHOICES, read_settings

DOWN = [must for must, (way, _) in MUSTS.items() if way == "down"]
lengths = st.fractions(min_value="1/1000", max_value=500, max_denominator=10**4)
marks = st.sampled_from([mark for mark in CHOICES["mark"] if mark])
roundings = st.sampled_from(list(CHOICES["rounding"]))
displays = st.sampled_from([display for display in CHOICES["display"] if display])
few = settings(max_examples=12, suppress_health_check=list(HealthCheck))
questions = pytest.mark.parametrize("key", list(RECKONERS))


@given(lengths, st.sampled_from(list(GRIDS)), roundings, st.sampled_from(list(MUSTS)))
def test_what_a_length_must_do_wins_over_the_rounding_of_the_settings(length, mark, way, must):
    rounded = told_mark(length, GRIDS[mark], way, must)
    assert (rounded.mark <= length) if must in DOWN else (rounded.mark >= length)
    assert abs(rounded.dropped) < GRIDS[mark].step


OTHER_CASES = {
    "shelf_strength": ({"solve": "span"}, {"solve": "thickness"}),
    "opening": {"way": "bent", "reading": "40 1/2", "doubt": "1/16"},
    "tape_error": {"solve": "allowed"},
    "shelf_length": {"width": "", "shelf": "35 1/4"},
    "two_strips": {"board": "", "wide": "3 1/8"},
    "shelf_layout": {"layout": "fit", "height": "", "things": [{"height": "12 5/8"}] * 3},
    "mitered_length": {"known_face": "rabbet", "rabbet": "3/8", "left_corner": "97.5"},
    "mitered_frame": {"shape": "polygon", "around": "outside", "size": "30", "rabbet": ""},
    "space": {"above": "", "kick": ""},
    "doors": (
        {"made": "wood", "species": "maple_red", "now": "8", "year": "most"},
        {"known": "door", "fit": "overlay"},
    ),
    "door_swing": ({"thickness": "2", "width": "6"}, {"hinge": "cup", "wall": ""}),
    "case_molding": (
        {"built": "walls"},
        {"molding": "crown", "found": "legs", "drop": "2 5/8", "projection": "2 1/16"},
        {"built": "left", "left_end": "cope", "right_end": "return", "right_short": "1"},
    ),
    "studs": {"dividers": ["10 3/4"], "strips": []},
    "leveling": {"way": "cut", "taken": "steps", "cases": ["20", "17 1/8"]},
    "plumb_check": ({"also": "diagonals"}, {"also": "level", "front": "yes"}),
}
"""What is filled in otherwise than in the example, in turn with it: other answers must go in. One
way, or several."""


def filled_in(key, more):
    """The example of a question with `more` thousandths of an inch on every length of it."""
    reckoner = RECKONERS[key]
    others = OTHER_CASES.get(key, {})
    cases = ({}, *others) if isinstance(others, tuple) else ({}, others)
    values = reckoner.example | cases[more % len(cases)]
    lengthened = {each.key: each for each in reckoner.fields}
    for number, (name, text) in enumerate(values.items()):
        if lengthened[name].kind == "length" and text:
            values[name] = f"{text} + {more * (number + 1) % 97}/1000 in"
        if lengthened[name].kind == "lengths":
            values[name] = [f"{each} + {more * (number + 1) % 97}/1000 in" for each in text]
    return values


def found(key, more, wanted):
    """(question, what was worked out, the `Show` of the settings); skips what is refused."""
    reckoner, chosen = RECKONERS[key], read_settings(wanted)
    try:
        form = read_values(reckoner, filled_in(key, more), chosen)
        show = Show(chosen, form.lengths(reckoner))
        return reckoner, form, reckoner.compute(form.given, show), show
    except (Refusal, Refusals):
        assume(False)


def single(answer, value, show):
    """The lengths of an answer, one by one, each as its own answer would be told."""
    values = [each for _, each in value] if answer.kind == "lengths" else [value]
    for each in values:
        yield told(Answer(answer.key, answer.label, "length", must=answer.must), each, show), each


@questions
def test_each_answer_is_rounded_the_way_that_its_question_declares(key):
    seen = []

    @few
    @given(st.integers(0, 5000), marks, roundings, displays)
    def holds(more, mark, rounding, display):
        wanted = {"mark": mark, "rounding": rounding, "display": display}
        reckoner, _, reckoning, show = found(key, more, wanted)
        for answer in reckoner.answers:
            value = reckoning.answers.get(answer.key)
            if value is None or answer.kind not in ("length", "lengths"):
                continue
            for said, each in single(answer, value, show):
                must = each.must if isinstance(each, Rounded) else None
                must = answer.rounding or (must if answer.must == "case" else None)
                if must is None:
                    continue
                seen.append(must)
                size, told_at = exact_of(each), Fraction(said["mark"])
                assert (told_at <= size) if must in DOWN else (told_at >= size)
                why = f"rounded {' '.join(MUSTS[must])}"
                assert said["why"] == ("" if said["direction"] == "exact" else why)
                assert said["dropped_text"].endswith(said["why"])

    holds()
    declared = {each.rounding for each in RECKONERS[key].answers if each.rounding}
    assert declared <= set(seen)


NUMBERS = re.compile(r"[\d.][\d ./]*(?:″| mm)(?! \((?:up|down))")


def texts_in(data):
    """Every text that is in some data."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for each in data.values():
            yield from texts_in(each)
    elif isinstance(data, (list, tuple)):
        for each in data:
            yield from texts_in(each)


@questions
def test_drawing_working_and_pieces_tell_the_number_of_the_list(key):
    """A number that its question rounds one way stands nowhere as it would be rounded the other."""

    @few
    @given(st.integers(0, 5000), st.sampled_from(["1/8", "1/16", "1 mm"]))
    def holds(more, mark):
        reckoner, form, reckoning, show = found(key, more, {"mark": mark})
        whole = reckoning_told(reckoner, form, reckoning, show)
        marks_of, wrong = {}, set()
        for answer in reckoner.answers:
            value = reckoning.answers.get(answer.key)
            if value is None or answer.kind not in ("length", "lengths"):
                continue
            for said, each in single(answer, value, show):
                if said["why"]:
                    marks_of[said["decimals"]] = said["mark"]
                    grid = each.grid if isinstance(each, Rounded) else show.settings.grid
                    near = told_mark(exact_of(each), grid)
                    if near.grid.name in GRIDS:  # the working tells small decimals as they are
                        wrong.add(show.text(near))
        wrong -= {said["text"] for said in texts_told(whole["answers"])}
        for part in reckoning.parts:
            length = part_told(part, show)["length"]
            assert length["mark"] == marks_of.get(length["decimals"], length["mark"])
        seen = [*texts_in(whole["drawing"]), *texts_in(whole["working"])]
        assert wrong.isdisjoint(NUMBERS.findall(" ".join(seen)))

    holds()


def texts_told(answers):
    for each in answers:
        yield from each.get("items", [each])


@pytest.mark.parametrize(
    ("question", "values", "told_as"),
    [
        ("opening", {"readings": ["37 15/32", "37 5/8"]}, "37 15/32″"),
        ("opening", {"readings": ["37.469", "37 5/8"]}, "37.469″"),
        ("opening", {"readings": ["37.469", "37 5/8"], "room": "1/7"}, "37 5/16″"),
        ("opening", {"readings": ["952 mm", "953 mm"]}, "952 mm"),
        (
            "shelf_length",
            {"width": "35 15/32", "width_is": "inside", "joint": "fixed"},
            "35 15/32″",
        ),
        ("shelf_length", {"width": "901 mm", "width_is": "inside", "joint": "fixed"}, "901 mm"),
        (
            "shelf_length",
            {"width": "901 mm", "width_is": "inside", "joint": "pins", "gap": "1/16"},
            "35 11/32″",
        ),
        (
            "shelf_length",
            {"width": "900 mm", "width_is": "inside", "joint": "pins", "gap": "1/16"},
            "35 9/32″",
        ),
    ],
)
def test_what_goes_in_is_never_longer_than_what_was_read(question, values, told_as):
    """Arithmetic: 901 mm less 1/8 is 35.347, nearest 35 3/8; 900 mm less that 35.308, 35 5/16."""
    first = reckon(question, **values)["answers"][0]
    assert first["text"] == told_as
    assert Fraction(first["mark"]) <= exact(first)


def test_where_the_mark_is_told_the_way_it_was_rounded_is_told_too():
    """901 mm less two gaps of 1/16 is 35.347: 35 11/32 on a tape with sixteenths, 0.004 heavy."""
    values = {"width": "901 mm", "width_is": "inside", "joint": "pins", "gap": "1/16"}
    document = acts(
        begun(),
        ("keep_line", {"name": "Shelf", "reckoner": "shelf_length", "values": values}),
        ("keep_reading", {"name": "Twice", "text": "2 × Shelf"}),
    )
    said = reckon("shelf_length", **values)
    assert said["answers"][0]["dropped_text"] == "0.004″ heavy, rounded down so it fits"
    assert said["tape"]["words"] == "halfway between 35 5/16 and 35 3/8"
    told = "≈ 35 11/32″ (down)"
    assert "35 11/32″ (down)" in said["drawing"]["words"]
    seen = view(document)
    assert seen["entries"][0]["headline"]["brief"] == told
    assert seen["pieces"][0]["length"]["why"] == "rounded down so it fits"
    table = answered("csv", document, what="parts")["text"]
    assert "down to 1/32" in table
    grid = {"columns": "2", "rows": "5"}
    assert told in [*texts_in(answered("labels", document, paper="letter", values=grid))]
    assert answered("take_csv", begun(), what="parts", text=table, when="2026-11-25")["ok"]
    assert exact(seen["entries"][1]["headline"]) == 2 * exact(seen["entries"][0]["headline"])


@given(
    st.fractions(min_value="1/8", max_value=3, max_denominator=640),
    st.fractions(min_value="0", max_value=2, max_denominator=640),
    st.sampled_from(["1/4", "1/16", "1 mm", ".01 in"]),
)
def test_the_smallest_board_that_is_told_is_taken_by_the_same_question(least, back, mark):
    case = {"set_back": f"{back} in", "least": f"{least} in", "kerf": "1/8 in"}
    settings = {"mark": mark}
    said = reckon("two_strips", settings, board="40", wide="", **case)
    board = said["by_key"]["least_board"]["plain"]
    assert ask("two_strips", settings, board=board, wide="", **case)["ok"]
    refused = ask("two_strips", settings, board=f"{board} - 1 in", wide="", **case)
    if not refused["ok"] and "Start with" in refused["error"]["remedy"]:
        offered = re.search(r"board (.*?) wide", refused["error"]["remedy"])[1]
        assert ask("two_strips", settings, board=offered, wide="", **case)["ok"]


@pytest.mark.parametrize("kind", ["length", "lengths"])
def test_a_new_length_can_not_be_silent_about_its_rounding(kind):
    with pytest.raises(ValueError, match="must it do"):
        Answer("gap", "Gap", kind)
    with pytest.raises(ValueError, match="must it do"):
        Answer("gap", "Gap", kind, must="nearest")
    with pytest.raises(ValueError, match="must it do"):
        Answer("many", "How many", "count", must="reach")
