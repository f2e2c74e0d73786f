"""One message of each kind, every question's example in inches and millimeters, and bad ones."""

import sawside

CABINET = {
    "schema": 1,
    "name": "Record cabinet",
    "settings": {"mark": "1/32"},
    "next": 3,
    "entries": [
        {"id": "1", "kind": "reading", "name": "Alcove", "unit": "in", "text": "37 9/16"},
        {
            "id": "2",
            "kind": "line",
            "name": "Top rail",
            "unit": "in",
            "reckoner": "mitered_length",
            "values": {
                "known": "31 5/8",
                "width": "2 1/4",
                "left_end": "other",
                "left_angle": "30",
            },
            "cut": {},
        },
    ],
}
SUMS = ["31 5/8 + 2 1/4", "6'-7-9/32\"", "5½ × 3", "3//4", "1/2 of 37 9/16", "18 mm × 2", "½ ÷ 0"]


def messages():
    """One of each kind, every question's example in inches and millimeters, and bad ones."""
    yield {"do": "describe"}
    # What a first visit asks could be answered before the rest is here, but not out of turn.
    yield {"do": "strip", "settings": {}}
    yield {"do": "strip", "settings": {"mark": "1/32"}}
    yield from _of_a_project()
    yield from _of_files()
    yield {"do": "nothing"}
    for text in SUMS:
        yield {"do": "read", "text": text}
    line = {"exact": "12", "kind": "length"}
    yield {"do": "read", "text": "[Alcove] + 1", "document": CABINET, "names": {"Alcove": line}}
    for question in sawside.handle({"do": "describe"})["reckoners"]:
        example = {"reckoner": question["key"], "values": question["example"]}
        for settings in ({}, {"unit": "in", "display": "mm", "mark": "0.5 mm"}):
            yield {"do": "reckon"} | example | {"settings": settings}
        yield {"do": "paper"} | example | {"paper": "a4"}


def _of_a_project():
    for order in ("set-up", "board", "part", "plan"):
        yield {"do": "view", "document": CABINET, "order": order}
    yield {"do": "plan", "document": CABINET, "effort": 0}
    act = sawside.handle({"do": "plan", "document": CABINET})["act"]
    planned = sawside.handle({"do": "change", "document": CABINET, "act": act})["document"]
    yield {"do": "change", "document": planned, "act": {"act": "board_bad", "board": "1"}}
    yield {"do": "view", "document": planned, "order": "plan"}
    yield {"do": "csv", "document": planned, "what": "buy"}
    yield {"do": "labels", "document": CABINET, "paper": "letter", "values": {}}
    yield {"do": "tally", "tally": None, "act": {"act": "enter", "text": "31 5/8 + 2 1/4"}}
    yield {"do": "tally_sum", "tally": None, "document": CABINET, "text": "[Alcove] ÷ 2"}
    yield {"do": "change", "document": CABINET, "act": {"act": "delete", "id": "1"}}
    yield {"do": "change", "document": CABINET, "act": {"act": "labels", "values": {"rows": "2"}}}
    forms = [{"reckoner": "diagonal", "values": {"width": "36 1/8", "height": "41 1/4"}}]
    yield {"do": "today", "document": CABINET, "forms": forms}
    yield {"do": "entry", "document": CABINET, "id": "2"}
    yield {"do": "sure", "document": CABINET, "id": "1", "tape": "II"}
    yield {"do": "sure", "document": CABINET, "id": "2", "answer": "left_setting"}


def _of_files():
    for what in ("parts", "readings", "cuts", "stock"):
        table = sawside.handle({"do": "csv", "document": CABINET, "what": what})["text"]
        yield {"do": "csv", "document": CABINET, "what": what}
        edited = table.replace("\r\nAlcove", "\r\nAlcove left")
        yield {"do": "take_csv", "document": CABINET, "what": what, "text": edited}
    file = sawside.handle({"do": "backup", "document": CABINET, "when": "2026-11-25"})["text"]
    yield {"do": "backup", "document": CABINET, "when": "2026-11-25"}
    yield {"do": "restore", "text": file}
    yield {"do": "merge", "document": CABINET, "text": file}
