"""What a name in a line of the tally means is settled when the line is entered.

No name that is given or taken away later, in the tally or in the project, makes it mean another.
"""

from fractions import Fraction

from hypothesis import settings as hypothesis_settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, rule
from projects import answered, changed
from tallies import after, enter, name, project, texts, told, values

import sawside


def test_what_was_restored_in_the_place_of_a_project_lends_its_lines_no_number():
    """Its entry 1 is another one: 36 of a width is no 12 of a depth."""
    was, restored = project(width="36"), project(depth="12")
    tally = after(was, None, enter("[width] + 1"), enter("2"))["tally"]
    said = told(restored, tally, of="two")
    assert values(said) == [None, 2]
    assert texts(said) == ["[width] + 1", "2"]
    error = said["lines"][0]["error"]
    assert "from another Record cabinet" in error["message"]
    assert "Undo the restore" in error["remedy"]
    assert values(told(was, said["tally"])) == [37, 2]


def test_a_merge_and_its_undo_leave_the_lines_as_they_were():
    """The backup's width is another one, and comes under a numbered name."""
    document = project(width="36")
    other = answered("backup", project(width="12", depth="7"), when="2026-11-25")["text"]
    tally = after(document, None, enter("[width] + 1"))["tally"]
    merged = answered("merge", document, text=other, when="2026-11-25")
    said = told(merged["document"], tally)
    assert (texts(said), values(said)) == (["[width] + 1"], [37])
    undone = changed(merged["document"], **merged["undo"])
    assert told(undone, said["tally"])["tally"] == tally


def test_a_name_that_a_line_below_took_from_the_project_is_refused_for_a_line():
    document = project(width="36")
    tally = after(document, None, enter("1/2"), enter("[WIDTH] + 1"))["tally"]
    refused = told(document, tally, name("1", "Width"))["error"]
    assert (refused["kind"], refused["field"]) == ("conflict", "name")
    assert refused["message"] == "Line 2 uses “Width” from Record cabinet."
    other = project(width="50")
    assert told(other, tally, name("1", "width"), of="two")["error"]["kind"] == "conflict"
    assert told(None, tally, name("1", "width"), of=None)["error"]["kind"] == "conflict"
    assert values(after(document, tally, name("2", "width"))) == [Fraction(1, 2), 37]


def test_a_line_that_lost_the_line_it_called_never_takes_the_projects_number():
    document = project(side="3/4", width="36")
    tally = after(document, None, enter("1/2"), name("1", "side"))["tally"]
    said = after(document, tally, enter("[width] − 2 × side"))
    assert values(said) == [Fraction(1, 2), 35]
    gone = after(document, said["tally"], {"act": "delete", "id": "1"})
    assert values(gone) == [None]
    assert values(told(document, gone["tally"], gone["undo"])) == [Fraction(1, 2), 35]


def test_what_is_undone_below_a_name_leaves_what_was_entered_meanwhile():
    """Line 1, called side, is deleted; side is then the project's; then line 1 is there again."""
    document = project(side="3/4")
    tally = after(document, None, enter("1/2"), name("1", "side"))["tally"]
    gone = after(document, tally, {"act": "delete", "id": "1"})
    entered = after(document, gone["tally"], enter("2 × [side]"))
    assert values(entered) == [Fraction(3, 2)]
    back = told(document, entered["tally"], gone["undo"] | {"at": 0})
    assert values(back) == [Fraction(1, 2), Fraction(3, 2)]
    assert back["lines"][1]["note"] == "“side” is from Record cabinet here, not from a line above."
    again = after(document, back["tally"], enter("[2] + [side]"), name("2", "both"))
    assert values(again) == [Fraction(1, 2), Fraction(3, 2), 2]
    assert [line["note"] for line in again["lines"]][::2] == ["", ""]


def test_a_step_repeated_goes_on_with_what_its_line_means():
    document = project(side="3/4")
    tally = after(document, None, enter("1/2"), name("1", "side"))["tally"]
    gone = after(document, tally, {"act": "delete", "id": "1"})
    entered = after(document, gone["tally"], enter("10 + [side]"))
    back = told(document, entered["tally"], gone["undo"] | {"at": 0})
    said = after(document, back["tally"], {"act": "step", "how": "again"})
    assert values(said) == [Fraction(1, 2), Fraction(43, 4), Fraction(23, 2)]


def test_an_entry_that_is_kept_or_renamed_as_a_line_is_called_changes_no_line():
    document = project(width="36")
    tally = after(document, None, enter("1/2"), name("1", "side"))["tally"]
    tally = after(document, tally, enter("side + 1"), enter("[width] + side"))["tally"]
    before = [Fraction(1, 2), Fraction(3, 2), Fraction(73, 2)]
    document = changed(document, "keep_reading", name="side", text="20")
    assert values(told(document, tally)) == before
    document = changed(
        changed(document, "rename", id="2", name="end"), "rename", id="1", name="side"
    )
    said = told(document, tally)
    assert values(said) == before
    assert texts(said) == texts(told(None, tally))
    corrected = changed(document, "correct", id="1", text="40")
    assert values(told(corrected, said["tally"])) == [
        Fraction(1, 2),
        Fraction(3, 2),
        Fraction(81, 2),
    ]


def test_names_that_are_exchanged_in_the_project_are_exchanged_in_the_lines():
    document = project(A="10", B="3")
    tally = after(document, None, enter("A − B"))["tally"]
    exchanged = [("1", "C"), ("2", "A"), ("1", "B")]
    for identity, given in exchanged:
        document = changed(document, "rename", id=identity, name=given)
    said = told(document, tally)
    assert (texts(said), values(said)) == (["[B] − [A]"], [7])
    assert told(document, said["tally"])["tally"] == said["tally"]


def test_a_name_that_a_line_can_not_hold_is_followed_all_the_same():
    document = project(A="1")
    tally = after(document, None, enter(" + ".join(["[A]"] * 30)))["tally"]
    document = changed(document, "rename", id="1", name="A name that is rather long")
    assert values(told(document, tally)) == [30]
    longer = changed(document, "correct", id="1", text="2")
    assert values(told(longer, tally)) == [60]


def test_an_undo_from_before_a_name_was_changed_in_the_project_keeps_the_link():
    document = project(A="10")
    entered = after(document, None, enter("[A] + 1"))
    named = after(document, entered["tally"], name("1", "sum"))
    document = changed(document, "rename", id="1", name="Width")
    followed = told(document, named["tally"])
    undone = told(document, followed["tally"], named["undo"])
    assert (texts(undone), values(undone)) == (["[Width] + 1"], [11])


def test_what_is_being_typed_says_when_a_line_is_nearer_than_the_project():
    document = project(side="3/4", width="36")
    line = {"side": {"exact": "1/2", "kind": "length"}}
    message = {"do": "read", "document": document, "names": line}
    said = sawside.handle(message | {"text": "2 × Side"})
    assert said["value"]["exact"] == "1"
    assert (
        said["note"] == "“Side” means the line in the history here, not the one in Record cabinet."
    )
    assert "note" not in sawside.handle(message | {"text": "[width] + 1"})


def test_a_line_with_a_name_that_holds_a_sign_is_found():
    """“of” and “x” stand in a name as well: the longer name is meant."""
    document = project(width="36", top="4")
    tally = after(document, None, enter("1/2"), name("1", "top of case"), enter("3/4"))["tally"]
    tally = after(document, tally, name("2", "case"))["tally"]
    said = after(document, tally, enter("width − top of case"), enter("2 of case"))
    assert values(said)[2:] == [Fraction(71, 2), Fraction(3, 2)]
    named = after(document, said["tally"], name("1", "lid"))
    assert texts(named)[2:] == ["width − [lid]", "2 of case"]


NAMES = ["side", "width", "side gap", "gap"]


class Meaning(RuleBasedStateMachine):
    """The readings keep their numbers, so a line comes to what it came to, or to nothing."""

    @initialize()
    def begin(self):
        self.document = project(side="101", width="1009")
        self.tally, self.undone, self.came_to = None, [], {}

    def make(self, act):
        said = told(self.document, self.tally, act)
        if said["ok"]:
            self.tally = said["tally"]
            self.undone.append(said["undo"])
            self.compare(said)
        return said

    def compare(self, said):
        for line, value in zip(said["lines"], values(said), strict=True):
            if value is not None:
                assert self.came_to.setdefault(line["id"], value) == value, line

    @rule(
        text=st.sampled_from(
            ["7", "side + 1", "[width] − side", "2 × side gap", "[gap] + [1]", "side + width + [2]"]
        )
    )
    def enter(self, text):
        self.make(enter(text))

    @rule(how=st.sampled_from(["again", "double"]))
    def step(self, how):
        self.make({"act": "step", "how": how})

    @rule(identity=st.integers(1, 6).map(str), given=st.sampled_from([*NAMES, ""]))
    def name(self, identity, given):
        self.make(name(identity, given))

    @rule(identity=st.integers(1, 6).map(str))
    def delete(self, identity):
        self.make({"act": "delete", "id": identity})

    @rule()
    def undo(self):
        if self.undone:
            said = told(self.document, self.tally, self.undone.pop())
            assert said["ok"], said
            self.tally = said["tally"]
            self.compare(said)

    @rule(
        act=st.sampled_from(["keep_reading", "rename"]),
        identity=st.sampled_from("123"),
        given=st.sampled_from(NAMES),
    )
    def in_the_project(self, act, identity, given):
        text = str(10_000 + self.document["next"])
        message = {"act": act, "id": identity, "name": given, "text": text}
        said = sawside.handle({"do": "change", "document": self.document, "act": message})
        if said["ok"]:
            self.document = said["document"]
            self.compare(told(self.document, self.tally))


Meaning.TestCase.settings = hypothesis_settings(
    max_examples=60, stateful_step_count=25, deadline=None
)
test_no_name_given_or_taken_away_changes_what_a_line_comes_to = Meaning.TestCase
