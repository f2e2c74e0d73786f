"""Lines of the tally use names of the open project, and follow it.

The sums are worked by hand: 37 9/16 − 1/4 = 37 5/16, and 37 7/16 − 1/4 = 37 3/16.
"""

import pytest
from projects import acts, begun, changed

import sawside


def project(**readings):
    """A project with readings by their names."""
    kept = [("keep_reading", {"name": name, "text": text}) for name, text in readings.items()]
    return acts(begun(), *kept)


def told(document, tally, act=None, of="one"):
    message = {"do": "tally", "tally": tally, "act": act, "document": document, "project": of}
    return sawside.handle(message)


def lines(document, *texts):
    """The tally after these lines were entered, all of which must be taken."""
    tally = None
    for text in texts:
        said = told(document, tally, {"act": "enter", "text": text})
        assert said["ok"], said
        tally = said["tally"]
    return tally


def marks(said):
    return [line["value"] and line["value"]["text"] for line in said["lines"]]


@pytest.mark.parametrize("name", ["[width]", "width", "[ WIDTH ]"])
def test_a_line_follows_a_reading_of_the_project_when_it_is_corrected(name):
    tally = lines(project(width="37 9/16"), f"{name} − 1/4", "[1] ÷ 2")
    assert marks(told(project(width="37 9/16"), tally)) == ["37 5/16″", "18 21/32″"]
    assert marks(told(project(width="37 7/16"), tally)) == ["37 3/16″", "18 19/32″"]


def test_another_answer_of_a_line_of_the_project_is_taken_by_its_label():
    values = {"known": "[width]", "width": "2 1/4", "left_end": "45", "right_end": "45"}
    rail = {"act": "keep_line", "name": "Rail", "reckoner": "mitered_length", "values": values}
    document = changed(project(width="37 9/16"), **rail)
    said = told(document, lines(document, "[Rail] − [Rail: Short side]"))
    assert marks(said) == ["4 1/2″"]


def test_a_line_of_the_tally_is_nearer_than_a_reading_of_the_same_name():
    document = project(side="3/4")
    tally = lines(document, "1/2")
    tally = told(document, tally, {"act": "name", "id": "1", "name": "side"})["tally"]
    said = told(document, tally, {"act": "enter", "text": "2 × [side]"})
    assert marks(said) == ["1/2″", "1″"]


def test_a_reading_gone_from_the_project_is_said_and_the_text_stays():
    document = project(width="37 9/16")
    tally = lines(document, "[width] − 1/4")
    gone = changed(document, "delete", id="1")
    said = told(changed(gone, "keep_reading", name="height", text="80 1/4"), tally)
    assert said["lines"][0]["text"] == "[width] − 1/4"
    assert said["lines"][0]["error"]["message"] == "There’s no width in this project."


def test_a_reading_without_a_value_is_said_by_its_name():
    document = project(side="3/4", width="[side] + 36")
    tally = lines(document, "[width] − 1/4")
    said = told(changed(document, act="delete", id="1"), tally)
    assert "width" in said["lines"][0]["error"]["message"]


def test_a_step_on_such_a_line_is_repeated():
    document = project(width="37 9/16")
    said = told(document, lines(document, "[width] − 1/4"), {"act": "step", "how": "again"})
    assert marks(said) == ["37 5/16″", "37 1/16″"]


def test_what_is_being_typed_knows_both_the_lines_and_the_project():
    message = {"do": "read", "text": "[width] − [1]", "document": project(width="37 9/16")}
    said = sawside.handle(message | {"names": {"1": {"exact": "3/4", "kind": "length"}}})
    assert said["value"]["text"] == "36 13/16″"


def test_a_document_that_is_none_is_refused():
    assert told({"schema": 2}, None)["error"]["kind"] == "message"


def test_a_line_of_a_project_that_is_not_open_says_so_and_never_takes_another_ones_number():
    one, other = project(A="10"), changed(project(A="50"), "rename_project", name="Bench")
    tally = lines(one, "[A] + 1", "2 + 3", "[1] + [2]")
    assert marks(told(other, tally, of="two")) == [None, "5″", None]
    for document, of in ((other, "two"), (None, None)):
        error = told(document, tally, of=of)["lines"][0]["error"]
        assert error["message"] == "This line uses a name from Record cabinet, which isn’t open."
    assert marks(told(one, tally)) == ["11″", "5″", "16″"]


def test_a_line_corrected_while_another_project_is_open_is_of_that_one_until_undone():
    one, other = project(A="10"), project(A="50")
    tally = lines(one, "[A] + 1")
    act = {"act": "correct", "id": "1", "text": "[A] + 2"}
    corrected = told(other, tally, act, of="two")
    assert marks(corrected) == ["52″"]
    assert marks(told(one, corrected["tally"])) == [None]
    undone = told(other, corrected["tally"], corrected["undo"], of="two")
    assert undone["tally"] == tally
    assert marks(undone) == [None]


def test_a_line_that_lost_the_line_it_called_does_not_take_what_the_project_calls_the_same():
    document = project(side="3/4")
    tally = told(document, lines(document, "1/2"), {"act": "name", "id": "1", "name": "side"})
    tally = told(document, tally["tally"], {"act": "enter", "text": "2 × [side]"})["tally"]
    assert marks(told(document, tally, {"act": "delete", "id": "1"})) == [None]


def test_a_line_follows_when_what_it_names_is_renamed_and_is_left_alone_where_it_means_another():
    one, other = project(A="10", side="3"), project(A="50")
    tally = lines(one, "A + 1", "1/2")
    tally = told(one, tally, {"act": "name", "id": "2", "name": "side"})["tally"]
    tally = told(one, tally, {"act": "enter", "text": "2 × side + A"})["tally"]
    tally = told(other, tally, {"act": "enter", "text": "[A] + 2"}, of="two")["tally"]
    renamed = changed(
        changed(one, act="rename", id="1", name="Width"), act="rename", id="2", name="Rail"
    )
    said = told(renamed, tally)
    texts = [line["text"] for line in said["lines"]]
    assert texts == ["[Width] + 1", "1/2", "2 × side + [Width]", "[A] + 2"]
    assert marks(said) == ["11″", "1/2″", "11″", None]


def test_the_label_of_an_answer_stays_when_its_line_is_renamed():
    values = {"known": "[width]", "width": "2 1/4", "left_end": "45", "right_end": "45"}
    rail = {"act": "keep_line", "name": "Rail", "reckoner": "mitered_length", "values": values}
    document = changed(project(width="37 9/16"), **rail)
    tally = lines(document, "[Rail] − [Rail: Short side]")
    renamed = changed(document, act="rename", id="2", name="Top")
    said = told(renamed, tally)
    assert said["lines"][0]["text"] == "[Top] − [Top: Short side]"
    assert marks(said) == ["4 1/2″"]


@pytest.mark.parametrize("of", [["one"], {"id": "one"}, 1])
def test_a_project_named_by_what_is_no_text_is_refused(of):
    assert told(project(A="10"), None, of=of)["error"]["field"] == "project"
