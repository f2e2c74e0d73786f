"""The tally: lines are corrected and the lines that used them follow; every act can be undone."""

from fractions import Fraction

import pytest
from hypothesis import settings as hypothesis_settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, precondition, rule

import sawside

HOSTILE = [
    {},
    {"schema": 1},
    {"schema": 2, "next": 1, "lines": "x"},
    {"schema": 2, "next": 1, "lines": [{"id": "1", "name": "", "text": "3", "unit": "in"}]},
    {"schema": 2, "next": 3, "lines": [{"id": "1", "name": "", "text": "3", "unit": "cubit"}]},
    {"schema": 2, "next": 3, "lines": [{"id": "¹", "name": "", "text": "3", "unit": "in"}]},
    {"schema": 2, "next": 3, "lines": [{"id": "1", "name": "", "text": 3, "unit": "in"}]},
    {"schema": True, "next": 1, "lines": []},
    [],
    "tally",
]


def told(tally=None, act=None, settings=None):
    message = {"do": "tally", "tally": tally, "act": act, "settings": settings or {}}
    return sawside.handle(message)


def after(*acts, settings=None):
    """The last answer of a row of acts, all of which must succeed."""
    tally, said = None, None
    for act in acts:
        said = told(tally, act, settings)
        assert said["ok"], said
        tally = said["tally"]
    return said


def enter(text):
    return {"act": "enter", "text": text}


def step(how):
    return {"act": "step", "how": how}


def inches(said):
    return [line["value"] and Fraction(line["value"]["exact"]) for line in said["lines"]]


def test_the_same_width_is_added_again_and_again():
    said = after(enter("31 5/8 + 2 1/4"), step("again"), step("again"))
    assert inches(said) == [Fraction(271, 8), Fraction(289, 8), Fraction(307, 8)]


def test_halve_and_double_go_on_from_the_last_line_whatever_its_sum():
    said = after(enter("10 + 1/4"), step("half"), step("double"), step("double"))
    assert inches(said) == [Fraction(41, 4), Fraction(41, 8), Fraction(41, 4), Fraction(41, 2)]


def test_a_corrected_line_is_followed_by_every_line_that_used_it():
    said = after(
        enter("37 9/16"),
        {"act": "name", "id": "1", "name": "alcove"},
        enter("[alcove] - 1/4"),
        enter("[2] ÷ 3"),
        enter("12"),
        {"act": "correct", "id": "1", "text": "37 7/16"},
    )
    assert inches(said) == [Fraction(599, 16), Fraction(595, 16), Fraction(595, 48), Fraction(12)]


def test_a_line_keeps_the_unit_in_which_it_was_typed():
    tally = after(enter("300"), settings={"unit": "mm"})["tally"]
    said = told(tally)
    assert inches(said) == [Fraction(1500, 127)]  # 300 / 25.4


def test_a_line_whose_source_is_gone_says_so_and_comes_back_with_it():
    said = after(enter("3"), enter("[1] + 1"), {"act": "delete", "id": "1"})
    assert [line["ok"] for line in said["lines"]] == [False]
    assert "named “1”" in said["lines"][0]["error"]["message"]
    assert inches(told(said["tally"], said["undo"])) == [3, 4]


def test_a_line_sees_only_the_lines_above_it_so_there_are_no_loops():
    tally = after(enter("3"), enter("[1] + 1"))["tally"]
    said = told(tally, {"act": "correct", "id": "1", "text": "[2] + 1"})
    assert said["error"]["field"] == "text"
    assert told(tally, {"act": "correct", "id": "1", "text": "[1] + 1"})["ok"] is False


def test_lines_are_renamed_everywhere_and_a_taken_name_is_refused():
    tally = after(
        enter("3"),
        {"act": "name", "id": "1", "name": "side"},
        enter("side + [side]"),
        {"act": "name", "id": "1", "name": "end"},
    )["tally"]
    assert tally["lines"][1]["text"] == "[end] + [end]"
    refused = told(tally, {"act": "name", "id": "2", "name": "END"})
    assert refused["error"]["kind"] == "conflict"


@pytest.mark.parametrize("how", ["again", "half", "double", "kerf"])
def test_a_step_with_nothing_to_go_on_from_is_refused(how):
    assert told(None, step(how))["error"]["kind"] == "missing"


def test_a_single_number_has_no_step_to_repeat():
    tally = after(enter("31 5/8"))["tally"]
    assert told(tally, step("again"))["error"]["kind"] == "missing"


@pytest.mark.parametrize("text", ["", "3//4", "[7] + 1", "1,024"])
def test_what_cannot_be_read_is_not_entered(text):
    assert told(None, enter(text))["ok"] is False


@pytest.mark.parametrize("tally", HOSTILE)
def test_a_damaged_tally_is_refused_in_words(tally):
    said = told(tally, enter("3"))
    assert said["ok"] is False
    assert said["error"]["kind"] in ("message", "unknown")


def test_a_newer_tally_is_refused_and_left_alone():
    assert told({"schema": 3, "next": 1, "lines": []})["error"]["kind"] == "newer"


class Tally(RuleBasedStateMachine):
    """Whatever is done can be undone: the tally is then the very one that it was."""

    @initialize()
    def begin(self):
        self.tally = {"schema": 2, "next": 1, "lines": []}

    def make(self, act):
        said = told(self.tally, act)
        if not said["ok"]:
            return
        undone = told(said["tally"], said["undo"])
        assert undone["ok"], undone
        assert undone["tally"]["lines"] == self.tally["lines"]
        redone = told(undone["tally"], undone["undo"])
        assert redone["tally"]["lines"] == said["tally"]["lines"]
        self.tally = said["tally"]

    identity = st.integers(1, 12).map(str)
    text = st.one_of(
        st.sampled_from(["3", "1/2", "10 + 3/4", "2 × 5 mm", "side + 1", "nonsense"]),
        st.integers(1, 12).map(lambda number: f"[{number}] + 1/8"),
    )

    @rule(text=text)
    def enter(self, text):
        self.make(enter(text))

    @rule(how=st.sampled_from(["again", "half", "double"]))
    def step(self, how):
        self.make(step(how))

    @rule(identity=identity, text=text)
    def correct(self, identity, text):
        self.make({"act": "correct", "id": identity, "text": text})

    @rule(identity=identity, name=st.sampled_from(["side", "end", "left side", ""]))
    def name(self, identity, name):
        self.make({"act": "name", "id": identity, "name": name})

    @rule(identity=identity)
    def delete(self, identity):
        self.make({"act": "delete", "id": identity})

    @precondition(lambda self: len(self.tally["lines"]) > 4)
    @rule()
    def clear(self):
        self.make({"act": "clear"})


Tally.TestCase.settings = hypothesis_settings(
    max_examples=40, stateful_step_count=20, deadline=None
)
test_every_act_on_the_tally_can_be_undone_and_redone = Tally.TestCase
