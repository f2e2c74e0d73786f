"""Entries use one another by name: worked out in order, told what they wait for, never in a loop.

Lengths by hand: 37 9/16 - 1/4 = 37 5/16; a 45° miter takes the stock's width at each end, so the
short side of the rail is 37 5/16 - 4 1/2 = 32 13/16 (common practice, no source).
"""

import pytest
from projects import acts, answered, ask, begun, change, changed, entry, headlines, linked, view


def test_a_correction_of_a_reading_reaches_all_that_depends_on_it():
    document = linked()
    assert headlines(document) == {
        "Alcove width": "37 9/16″",
        "Case width": "37 5/16″",
        "Top rail": "37 5/16″",
        "Panel": "33 9/16″",
    }
    document = changed(document, "correct", id="1", text="37 7/16")
    assert headlines(document) == {
        "Alcove width": "37 7/16″",
        "Case width": "37 3/16″",
        "Top rail": "37 3/16″",
        "Panel": "33 7/16″",
    }


def test_an_entry_says_what_it_uses_and_what_uses_it():
    rail = entry(linked(), "Top rail")
    assert (rail["uses"], rail["used_by"], rail["insert"]) == (["2"], ["4"], "[Top rail]")
    assert entry(linked(), "Case width")["title"] == "Sum"
    assert entry(linked(), "Alcove width")["title"] == "Reading"


def test_exact_numbers_are_linked_and_never_their_marks():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Third", "text": "10 ÷ 3"}),
        ("keep_reading", {"name": "Whole", "text": "3 × Third"}),
    )
    assert headlines(document) == {"Third": "3 5/16″", "Whole": "10″"}


def test_a_number_that_no_fraction_tells_goes_on_as_closely_as_no_mark_can_show():
    diagonal = {"solve": "diagonal", "width": "1", "height": "1"}
    document = acts(
        begun(),
        ("keep_line", {"name": "Across", "reckoner": "square", "values": diagonal}),
        ("keep_reading", {"name": "Square", "text": "Across × Across"}),
    )
    square = entry(document, "Square")["headline"]["decimals"]
    assert square in ("2", "2.000000…", "1.999999…")


def test_what_is_missing_is_named_and_what_comes_after_says_what_it_waits_for():
    document = changed(linked(), "delete", id="1")
    case, rail, panel = (entry(document, name) for name in ("Case width", "Top rail", "Panel"))
    assert case["error"]["message"] == "There’s no Alcove width in this project."
    assert case["text"] == "Alcove width - 2 × 1/8"
    assert rail["error"]["message"] == "Waiting on Case width."
    assert rail["waits"] == [{"id": "2", "name": "Case width"}]
    assert panel["waits"] == [{"id": "3", "name": "Top rail"}]
    assert (rail["error"]["kind"], rail["error"]["field"]) == ("missing", "known")
    again = changed(document, "keep_reading", name="Alcove width", text="37 9/16")
    assert headlines(again)["Panel"] == "33 9/16″"


def test_a_circle_is_refused_with_its_chain_named():
    refused = change(linked(), "correct", id="1", text="[Panel] + 4")["error"]
    assert refused["kind"] == "conflict"
    assert refused["message"] == (
        "Alcove width → Case width → Top rail → Panel → Alcove width refers back to itself."
    )
    assert refused["field"] == "text"
    refused = change(linked(), "correct", id="1", text="Alcove width + 4")["error"]
    assert refused["message"] == "Alcove width → Alcove width refers back to itself."


def test_a_circle_in_a_document_from_outside_is_told_and_stops_nothing_else():
    document = linked()
    document["entries"][0]["text"] = "[Panel] + 4"
    document = changed(document, "keep_reading", name="Depth", text="11")
    seen = {each["name"]: each for each in view(document)["entries"]}
    assert "refers back to itself" in seen["Alcove width"]["error"]["message"]
    assert seen["Depth"]["headline"]["text"] == "11″"
    mended = changed(document, "correct", id="1", text="37 9/16")
    assert headlines(mended)["Panel"] == "33 9/16″"


def test_a_field_that_is_not_shown_makes_nothing_wait():
    values = {"known": "30", "width": "2", "left_end": "45", "left_angle": "[Nothing]"}
    document = changed(begun(), "keep_line", name="a", reckoner="mitered_length", values=values)
    assert entry(document, "a")["waits"] == []


def test_a_question_not_yet_kept_is_answered_with_the_names_of_the_project():
    values = {"known": "[Case width] - 1/16", "width": "2"}
    said = answered("reckon", linked(), reckoner="mitered_length", values=values)
    assert said["echoes"]["known"] == "[Case width] − 1/16″"
    assert said["answers"][0]["text"] == "41 1/4″"
    read = answered("read", linked(), text="Top rail ÷ 2")
    assert read["value"]["exact"] == "597/32"
    waits = ask(
        "reckon",
        linked(),
        reckoner="mitered_length",
        id="2",
        values=values | {"known": "[Top rail]"},
    )
    assert waits["error"]["field"] == "known"
    assert "depends on this one" in waits["error"]["message"]
    both = ask(
        "reckon", linked(), reckoner="mitered_length", values={"known": "Alc", "width": "Lost + 1"}
    )
    errors = [both["error"], *both["more"]]
    assert [(each["field"], each["message"]) for each in errors] == [
        ("known", "There’s no Alc in this project."),
        ("width", "There’s no Lost in this project."),
    ]
    assert [each.get("unfinished", False) for each in errors] == [True, False]


def test_a_reading_is_corrected_by_the_tape_that_it_was_read_with():
    tape = {"name": "Old tape", "block": "1", "block_reads": "1 1/16"}
    document = acts(
        begun(),
        ("set", {"settings": {"tapes": [tape]}}),
        ("keep_reading", {"name": "Width", "text": "37 9/16", "tape": "Old tape"}),
        ("keep_reading", {"name": "Half", "text": "Width ÷ 2"}),
    )
    assert headlines(document) == {"Width": "37 1/2″", "Half": "18 3/4″"}
    assert entry(document, "Width")["summary"] == "37 9/16″ with Old tape, corrected"
    lost = changed(document, "set", settings={})
    assert "no tape" in entry(lost, "Width")["error"]["message"]
    assert entry(lost, "Half")["waits"] == [{"id": "1", "name": "Width"}]


def test_what_is_told_of_a_reading_is_kept_and_its_earlier_texts_as_well():
    told = {
        "where": "at the floor",
        "side": "light",
        "fineness": "1/32",
        "off": "1/16",
        "photo": "p1",
    }
    document = changed(
        begun(), "keep_reading", name="Width", text="37 9/16", when="2026-11-24T18:05", **told
    )
    document = changed(document, "correct", id="1", text="37 7/16", when="2026-11-25T09:30")
    seen = entry(document, "Width")
    assert {key: seen[key] for key in told} == told
    assert seen["when"] == "2026-11-25T09:30"
    assert seen["earlier"] == [{"text": "37 9/16", "when": "2026-11-24T18:05"}]
    assert view(document)["log"][0] == {
        "when": "2026-11-25T09:30",
        "said": "Corrected Width: 37 9/16 → 37 7/16.",
    }
    cleared = changed(document, "describe", id="1", where="", side="heavy")
    assert "where" not in cleared["entries"][0]
    assert cleared["entries"][0]["side"] == "heavy"


OLD_TAPE = {"name": "Old tape", "block": "4", "block_reads": "4 1/4"}
"""Its hook adds a quarter: what it reads as 31 is 30 3/4."""


def by_the_old_tape():
    """A reading kept in inches, taken with a tape that errs."""
    return acts(
        begun(),
        ("set", {"settings": {"tapes": [OLD_TAPE]}}),
        ("keep_reading", {"name": "Width", "text": "37 9/16", "tape": "Old tape"}),
        ("keep_reading", {"name": "Height", "text": "80 1/4"}),
    )


def test_what_is_typed_over_a_reading_is_told_as_its_tape_will_have_it_kept():
    document = by_the_old_tape()
    settings = document["settings"]
    said = ask("read", document, text="31", id="1", settings=settings)
    kept = headlines(changed(document, "correct", id="1", text="31"))["Width"]
    assert (said["value"]["text"], kept) == ("30 3/4″", "30 3/4″")
    assert said["corrected"] == "Reads 31″ with Old tape; corrected, 30 3/4″."
    assert said["echo"] == "31″"
    assert said["tape"] == ask("read", document, text="30 3/4")["tape"]
    other = ask("read", document, text="31", id="2", settings=settings)
    assert (other["value"]["text"], "corrected" in other) == ("31″", False)


def test_what_the_tape_of_a_reading_makes_impossible_is_refused_as_it_would_be_when_kept():
    document = by_the_old_tape()
    settings = document["settings"]
    assert (
        ask("read", document, text="2 × 3 in × 4 in", id="1", settings=settings)["error"]
        == (change(document, "correct", id="1", text="2 × 3 in × 4 in")["error"])
    )


@pytest.mark.parametrize("wrong", [["1"], {"id": "1"}, 1, True])
@pytest.mark.parametrize("do", ["read", "reckon", "paper"])
def test_an_entry_named_by_what_is_no_text_is_refused_in_words(do, wrong):
    more = {"text": "31", "reckoner": "mitered_length", "values": {"known": "31"}, "paper": "a4"}
    error = ask(do, linked(), id=wrong, **more)["error"]
    assert (error["kind"], error["field"]) == ("message", "id")
