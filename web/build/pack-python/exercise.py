"""Use all of the core, on made-up values of our own.

The build runs it, to find which modules of the standard library are in use.
"""

import json

import sawside

METRIC = {"unit": "mm"}
HANGING = {
    "how_many_fit": {"stick": "[Alcove width]", "piece": "9"},
    "shelf_length": {"width": "[Alcove width]", "width_is": "inside", "joint": "pins"},
    "corner_setting": {
        "found": "lengths",
        "one_leg": "[Alcove width]",
        "other_leg": "30",
        "across": "48",
    },
}
"""Lines that follow a reading: a count, a fit, an angle."""


def ask(**message):
    return json.loads(sawside.handle_json(json.dumps(message)))


def exercise():
    document = ask(do="change", document=None, act={"act": "begin", "name": "Record cabinet"}).get(
        "document"
    )

    def act(**change):
        nonlocal document
        changed = ask(do="change", document=document, act=change)
        document = changed.get("document", document)
        return changed

    for text in ("7-13/16 + 3", '31 5/8"', "3' 2 1/4\"", "917.6 mm", "12.375", "3//4", ""):
        for settings in ({}, METRIC):
            ask(do="read", text=text, settings=settings)
    for declared in ask(do="describe").get("reckoners", []):
        key, example = declared["key"], declared["example"]
        ask(do="reckon", reckoner=key, values=example)
        ask(do="reckon", reckoner=key, values=example, settings=METRIC)
        ask(do="reckon", reckoner=key, values={})
        ask(do="paper", reckoner=key, values=example, paper="a4")
        kept = act(act="keep_line", name="", reckoner=key, values=example).get("id")
        act(act="rename", id=kept, name=declared["title"])
    kept = act(act="keep_reading", name="Alcove width", text="37 9/16").get("id")
    rail = {"known": "[Alcove width]", "width": "2 1/4"}
    cut = act(act="keep_line", name="Rail", reckoner="mitered_length", values=rail).get("id")
    act(act="cut", id=cut, part="piece", by=1)
    act(act="correct", id=kept, text="37 5/8")
    act(act="correct", id=cut, values=rail | {"left_end": "other", "left_angle": "44"})
    act(act="spoil", id=cut, part="piece")
    tape = {"name": "Old tape", "block": "4", "block_reads": "4 1/4"}
    act(act="set", settings={"tapes": [tape]})
    act(act="describe", id=kept, tape="Old tape")
    ask(do="read", text="31", document=document, id=kept, settings=document.get("settings"))
    entered = ask(do="tally", document=document, act={"act": "enter", "text": "[Alcove width] + 1"})
    ask(do="tally_sum", document=document, tally=entered.get("tally"), text="[1] ÷ 2")
    act(act="labels", values={"columns": "3"})
    of_project(document, kept)
    act(act="delete", id=kept)
    ask(do="view", document=document)


def of_project(document, kept):
    """Each message about a project once."""
    for order in ("set-up", "board", "part"):
        ask(do="view", document=document, order=order)
    ask(do="entry", document=document, id=kept)
    ask(do="sure", document=document, id=kept, tape="h44")
    for reckoner, values in HANGING.items():
        line = {"act": "keep_line", "reckoner": reckoner, "values": values}
        hung = ask(do="change", document=document, act=line)
        ask(do="sure", document=hung.get("document"), id=hung.get("id"), tape="II")
    ask(do="labels", document=document, paper="a4")
    for what in ("parts", "readings", "cuts", "stock"):
        table = ask(do="csv", document=document, what=what).get("text", "")
        ask(do="take_csv", document=document, what=what, text=table)
    file = ask(do="backup", document=document, when="2026-11-25").get("text", "")
    ask(do="restore", text=file)
    ask(do="merge", document=document, text=file)
    other = ask(do="change", document=document, act={"act": "correct", "id": kept, "text": "37"})
    ask(do="merge", document=other.get("document"), text=file)


exercise()
