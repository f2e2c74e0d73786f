"""A piece or a blank that was spoiled: what is to be cut again, and what it took of the stock."""

from projects import acts, begun, change, changed, view

import sawside

RAIL = {"length": "30", "width": "4", "count": "1"}


def rails(many):
    """A project with one line of so many rails, all of them cut."""
    rail = {"name": "Rail", "reckoner": "piece_by_hand", "values": RAIL | {"count": str(many)}}
    cut = ("cut", {"id": "1", "part": "piece", "by": 1})
    return acts(begun(), ("keep_line", rail), *[cut] * many)


def test_spoiling_one_of_more_than_are_asked_for_says_that_none_is_to_be_cut():
    document = changed(rails(2), "correct", id="1", values=RAIL)
    spoiled = change(document, "spoil", id="1", part="piece")
    assert view(spoiled["document"])["pieces"][0]["left"] == 0
    assert spoiled["document"]["log"][-1]["said"] == (
        "Scrapped one Rail. You’ve already cut extras, so no replacement is needed."
    )


def test_what_is_scrapped_of_a_line_with_several_parts_is_named():
    document = sawside.handle({"do": "describe"})["case"]
    carcass = next(each["id"] for each in document["entries"] if each["name"] == "Carcass")
    document = changed(document, "cut", id=carcass, part="top", by=1)
    document = changed(document, "spoil", id=carcass, part="top")
    said = [each["said"] for each in document["log"][-2:]]
    assert said == ["Cut one Carcass: Top.", "Scrapped one Carcass: Top. Cut one more."]


def test_what_was_spoiled_took_its_rough_length():
    """30 and an inch to cut off, twice."""
    about = {"material": "Birch", "rough_length": "1"}
    document = acts(
        rails(1),
        ("about", {"id": "1", "part": "piece", "about": about}),
        ("spoil", {"id": "1", "part": "piece"}),
        ("spoil", {"id": "1", "part": "piece"}),
    )
    [tally] = view(document)["tally"]
    assert tally["rough"]["text"] == "31″"
    assert tally["spoiled_length"]["text"] == "62″"
