"""Bring everything into memory that a question may need, on made-up values of our own.

Run once before a snapshot is made, so that a restored core has nothing left to import; the build
runs it too, to find which modules of the standard library are in use.
"""

import json

import sawside

METRIC = {"unit": "mm"}


def ask(**message):
    return json.loads(sawside.handle_json(json.dumps(message)))


def warm():
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
        kept = act(act="keep_line", name="", reckoner=key, values=example).get("id")
        act(act="rename", id=kept, name=declared["title"])
    kept = act(act="keep_reading", name="Alcove width", text="37 9/16").get("id")
    act(act="correct", id=kept, text="37 5/8")
    ask(do="view", document=document)
    act(act="delete", id=kept)
    ask(do="view", document=document)


warm()
