"""What is kept of the ends of a piece that was cut is a code; the words are told from it.

The words of schema 4 are those that its documents hold, one of each way that an end is cut.
"""

import csv
import io
import json

import pytest
from asking import reckon
from projects import acts, answered, begun, changed, view

from sawside.reckoners import RECKONERS

OLD = {
    "flat miter 45° (saw set to 45)": ("@flat 45°", "miter 45°"),
    "flat miter ≈ 22.4° (saw set to ≈ 22.4)": ("@flat ≈ 22.4°", "miter ≈ 22.4°"),
    "flat miter 30°": ("@flat 30°", "miter 30°"),
    "edge miter 45°": ("@edge 45°", "bevel 45°"),
    "edge miter ≈ 44.75°, saw turned left": (
        "@edge ≈ 44.75° left",
        "bevel ≈ 44.75°, saw swung left",
    ),
    "compound miter ≈ 31.62°, tilted ≈ 33.86°": (
        "@compound ≈ 31.62° ≈ 33.86°",
        "compound miter ≈ 31.62°, bevel ≈ 33.86°",
    ),
    "coped edge miter first, 45°, saw turned right": (
        "@coped 45° right",
        "coped bevel first, 45°, saw swung right",
    ),
    "square 0°": ("@square 0°", "square 0°"),
    "square 0°, into the corner": ("@square 0° corner", "square 0°, into the corner"),
    "square chamfered 3/16″": ("@square chamfer 3/16″", "square chamfered 3/16″"),
    "square with 1/4″ to scribe": ("@square scribe 1/4″", "square with 1/4″ to scribe"),
}
OWN = ["as marked", "notched 30°", "flat 45°", "square, then rounded", "miter", "coped"]
"""A person's own words for an end."""


def with_ends(ends, **of_the_document):
    """A project of before with a piece cut and one spoiled, both with these ends."""
    rail = {"known": "36 1/8", "known_face": "outside", "width": "2 1/4"}
    document = acts(
        begun(),
        ("keep_line", {"name": "Rail", "reckoner": "mitered_length", "values": rail}),
        ("cut", {"id": "1", "part": "piece", "by": 1}),
        ("spoil", {"id": "1", "part": "piece"}),
        ("cut", {"id": "1", "part": "piece", "by": 1}),
    )
    for state in ("cut", "spoiled"):
        document["entries"][0][state]["piece"][0]["ends"] = ends
    return document | of_the_document


def kept(document, state="cut"):
    return document["entries"][0][state]["piece"][0].get("ends", "")


def told(document):
    text = answered("csv", document, what="cuts")["text"]
    return next(csv.DictReader(io.StringIO(text)))["Ends"]


def opened(document):
    return changed(document, "set", settings={"kerf": "1/8"})


@pytest.mark.parametrize(("words", "code", "now"), [(old, *new) for old, new in OLD.items()])
def test_an_end_that_was_kept_in_words_becomes_its_code_and_is_told_in_the_words_of_today(
    words, code, now
):
    document = opened(with_ends(f"{words}; {words}", schema=4))
    assert document["schema"] == 8
    assert kept(document) == kept(document, "spoiled") == f"{code}; {code}"
    assert told(document) == f"{now}; {now}"


@pytest.mark.parametrize("words", OWN)
def test_own_words_of_before_stay_as_they_were(words):
    document = opened(with_ends(f"square 0°; {words}", schema=4))
    assert kept(document) == f"@square 0°; {words}"
    assert told(document) == f"square 0°; {words}"
    alone = with_ends("cut; then; sanded", schema=4)
    assert kept(opened(alone)) == "cut; then; sanded"


def test_a_piece_cut_before_is_judged_as_before():
    mitered = "flat miter 45° (saw set to 45)"
    good = with_ends(f"{mitered}; {mitered}", schema=4)
    assert [each["verdict"] for each in view(good)["pieces"][0]["verdicts"]] == ["good"]
    other = with_ends(f"{mitered}; square 0°", schema=4)
    assert [each["verdict"] for each in view(other)["pieces"][0]["verdicts"]] == ["recut ends"]


@pytest.mark.parametrize("own", ["as marked", "edge miter 30°", "bevel 30°", "@edge 30°", "coped"])
def test_a_piece_whose_end_is_told_in_own_words_is_still_good(own):
    values = {"length": "30", "count": "1", "left_end": "told", "left_told": own}
    document = acts(
        begun(),
        ("keep_line", {"name": "Rail", "reckoner": "piece_by_hand", "values": values}),
        ("cut", {"id": "1", "part": "piece", "by": 1}),
    )
    assert view(document)["pieces"][0]["ends"]["left"]["cut"] in (own, "bevel")
    before = document | {"schema": 4}
    before["entries"][0]["cut"]["piece"][0]["ends"] = f"{own}; square 0°"
    assert [each["verdict"] for each in view(before)["pieces"][0]["verdicts"]] == ["good"]


def test_a_backup_of_schema_4_restores_with_codes():
    words = "edge miter ≈ 44.75°, saw turned left"
    document = with_ends(f"{words}; as marked", schema=4)
    backup = {
        "sawside": "backup",
        "schema": 4,
        "when": "2026-11-25",
        "document": document,
        "photos": {},
    }
    restored = answered("restore", None, text=json.dumps(backup))["document"]
    assert kept(restored) == "@edge ≈ 44.75° left; as marked"


def test_an_entry_that_an_undo_of_before_puts_back_is_brought_up_too():
    entry = with_ends("square 0°; square 0°")["entries"][0]
    deleted = changed(with_ends("@square 0°; @square 0°"), "delete", id="1")
    assert kept(changed(deleted, "restore", entry=entry, at=0)) == "@square 0°; @square 0°"


def test_a_table_of_before_is_taken_in_as_codes():
    document = with_ends("@square 0°; @square 0°")
    text = "Name,Part,Ends\nRail,piece,edge miter 45°; flat miter 30° (saw set to 30)"
    taken = answered("take_csv", document, what="cuts", text=text)["document"]
    assert kept(taken) == "@edge 45°; @flat 30°"


COPED_RUN = {
    "walls": [{"length": "60", "turn": "inside", "joint": "cope"}, {"length": "40"}],
    "layers": [{"projection": "3/4"}],
    "right_end": "scarf",
}


def test_every_end_of_every_question_has_a_code_and_no_word_of_it_is_kept():
    """But for own words, which no example has."""
    seen = set()
    forms = [(key, dict(reckoner.example)) for key, reckoner in RECKONERS.items()]
    for key, values in [*forms, ("molding_run", COPED_RUN)]:
        if not reckon(key, **values)["parts"]:
            continue
        line = {"name": "Line", "reckoner": key, "values": values}
        document = changed(begun(), "keep_line", **line)
        for piece in view(document)["pieces"]:
            after = changed(document, "cut", id="1", part=piece["part"], by=1)
            ends = after["entries"][0]["cut"][piece["part"]][0]["ends"].split("; ")
            assert all(end.startswith("@") for end in ends), key
            both = "; ".join(
                f"{end['cut']} {end['angle']}".strip() for end in piece["ends"].values()
            )
            assert told(after) == both
            seen |= {end.split()[0] for end in ends}
    assert seen == {"@square", "@flat", "@edge", "@compound", "@coped", "@scarf"}
