"""One reading changed in a project of linked lines: how long all that depends on it takes.

This file is run inside Pyodide too, where nothing but the core is at hand.
"""

import json
import time
from fractions import Fraction

import sawside
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.schema.cache import forget
from sawside.project.schema.document import read_document

ROUNDS = 15
FORMS = {
    "questions": {
        "kind": "line",
        "reckoner": "mitered_length",
        "values": {"known": "[{}] - 4 1/2", "width": "2 1/4"},
    },
    "sums": {"kind": "reading", "text": "[{}] + 1/8 - 1/16 - 1/16"},
}
"""What stands in each line; both hand on the very length that they got: a 45° miter adds 2 1/4 at
each end (common practice, no source)."""


def chain(lines, form):
    """A reading, and so many lines of which each uses the one before."""
    entries = [{"id": "1", "kind": "reading", "name": "Alcove width", "unit": "in", "text": "37"}]
    for number in range(2, lines + 2):
        before = entries[-1]["name"]
        entry = {"id": str(number), "name": f"Piece {number}", "unit": "in"} | FORMS[form]
        if form == "sums":
            entry["text"] = entry["text"].format(before)
        else:
            values = entry["values"]
            entry["values"] = values | {"known": values["known"].format(before)}
        entries.append(entry)
    return {
        "schema": 5,
        "name": "Record cabinet",
        "settings": {},
        "next": lines + 2,
        "entries": entries,
    }


def milliseconds(lines, form):
    """The least of some rounds (what else the machine does only adds to it).

    Each has another reading, and every line is worked out again.
    """
    document = read_document(chain(lines, form))
    Evaluation(document)
    times = []
    for number in range(1, ROUNDS + 1):
        reading = document["entries"][0] | {"text": f"37 {number}/17"}
        changed = document | {"entries": [reading, *document["entries"][1:]]}
        begun = time.perf_counter()
        worked = Evaluation(changed).worked
        times.append(1000 * (time.perf_counter() - begun))
        assert worked[str(lines + 1)].named("").value == 37 + Fraction(number, 17)
    return min(times)


def whole_message(lines, form):
    """The same from the text of the message to the text of the answer, without what follows."""
    document = chain(lines, form)
    times = []
    for number in range(ROUNDS + 1):
        act = {"act": "correct", "id": "1", "text": f"37 {number}/19"}
        message = {"do": "change", "document": document, "act": act, "follows": False}
        text = json.dumps(message)
        begun = time.perf_counter()
        answer = sawside.handle_json(text)
        times.append(1000 * (time.perf_counter() - begun))
        document = json.loads(answer)["document"]
    return min(times[1:])


IRRATIONAL = (
    {"solve": "span", "strip": "none"},
    {"solve": "strip", "strip": "both", "span": "36 3/4", "load": "records_12"},
)
"""What shelf strength is asked: its irrational answers take longest to be told apart to the last
bit."""


def shelves():
    """A project with eight lines of such answers."""
    told = {each["key"]: each for each in sawside.handle({"do": "describe"})["reckoners"]}
    example = told["shelf_strength"]["example"]
    lines = [
        {
            "id": str(number),
            "kind": "line",
            "name": f"Shelf {number}",
            "unit": "in",
            "reckoner": "shelf_strength",
            "values": example | asked,
        }
        for number, asked in enumerate(4 * IRRATIONAL, 1)
    ]
    return {"schema": 3, "name": "Record cabinet", "settings": {}, "next": 9, "entries": lines}


def settings_changed(follows):
    """Milliseconds for another mark in all of it, with or without what follows: the least."""
    document, times = shelves(), []
    for mark in ("1 mm", "0.5 mm", "0.1 mm", ".01 in", ".001 in"):
        forget()
        assert sawside.handle({"do": "view", "document": document})["ok"]
        act = {"act": "set", "settings": {"mark": mark}}
        message = {"do": "change", "document": document, "act": act, "follows": follows}
        begun = time.perf_counter()
        answer = sawside.handle(message)
        times.append(1000 * (time.perf_counter() - begun))
        assert len(answer["follows"]) == (len(document["entries"]) if follows else 0)
    return min(times)


def recomputed():
    """Milliseconds for 500 and 5000 lines of each form, for the whole message with 500, and for
    settings that change with what follows (told) and without."""
    times = {
        form: {
            "500": milliseconds(500, form),
            "5000": milliseconds(5000, form),
            "message": whole_message(500, form),
        }
        for form in FORMS
    }
    return times | {"settings": {"told": settings_changed(True), "alone": settings_changed(False)}}
