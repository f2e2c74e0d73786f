"""Wood on hand and wood to buy as lines of a project: linked, undone, kept in their unit."""

from projects import acts, answered, ask, begun, change, changed, view

WOOD = {"thickness": "20", "width": "150", "length": "2000", "bad": "254 to 508"}


def test_bad_stretches_keep_the_unit_that_they_were_typed_in():
    """By hand: 2000 − 508 = 1492 mm is 58.74 in."""
    line = {"name": "Rack", "reckoner": "wood_on_hand", "values": {"wood": [WOOD]}}
    metric = acts(changed(begun(), "set", settings={"unit": "mm"}), ("keep_line", line))
    inches = changed(metric, "set", settings={"unit": "in"})
    for document in (metric, inches):
        answers = answered("entry", document, id="1")["reckoning"]["answers"]
        [clear] = next(each for each in answers if each["key"] == "clear")["items"]
        assert clear["exact"] == "7460/127"


def test_a_board_to_buy_follows_the_reading_that_its_length_names_and_is_undone():
    row = {"nominal": "1 x 6", "length": "[Longest] + 1", "price": "2", "per": "foot"}
    document = acts(
        begun(),
        ("keep_reading", {"name": "Longest", "text": "71"}),
        ("keep_line", {"name": "Yard", "reckoner": "wood_to_buy", "values": {"wood": [row]}}),
    )
    assert view(document)["entries"][1]["verdict"] == "$12.00 each, 3 board feet"
    said = change(document, "correct", id="1", text="95")
    assert view(said["document"])["entries"][1]["verdict"] == "$16.00 each, 4 board feet"
    back = ask("change", said["document"], act=said["undo"])
    assert view(back["document"])["entries"][1]["verdict"] == "$12.00 each, 3 board feet"
