"""Bring into memory what opening the app needs, on made-up values of our own.

Run once before a snapshot is made. All that is used here is in every snapshot, and read at every
start: so no question is asked, which would make it grow with each of them. A question is imported
when it is first asked.
"""

import json

import sawside
from sawside.reckoners import RECKONERS


def ask(**message):
    return json.loads(sawside.handle_json(json.dumps(message)))


def warm():
    ask(do="strip", settings={})
    for text in ("7-13/16 + 3", '31 5/8"', "917.6 mm"):
        ask(do="read", text=text, settings={})
    begin = {"act": "begin", "name": "Record cabinet"}
    document = ask(do="change", document=None, act=begin).get("document")
    reading = {"act": "keep_reading", "name": "Alcove width", "text": "37 9/16"}
    document = ask(do="change", document=document, act=reading).get("document")
    ask(do="view", document=document)
    ask(do="tally", document=document, act={"act": "enter", "text": "[Alcove width] + 1"})
    # Which questions there are is found in their files, and those are not there after a restore.
    len(RECKONERS)


warm()
