"""Whole cases in one project, each line linked to others, beside as many plain lines: how long it
takes when the alcove is measured again, which reaches them all.

This file is run inside Pyodide too, where nothing but the core is at hand.
"""

import re
import time

import sawside
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.schema.cache import forget
from sawside.project.schema.document import read_document

ROUNDS, TURNS = 3, 4
LINES = 60
MEASURED = {"Alcove width, top": "37", "Alcove height, left": "95", "Alcove depth": "16"}
"""What every line of a case follows from: its narrowest width, lowest height and its depth."""

FOLLOWING = ("Space", "Carcass", "Shelf spacing", "Shelf strength", "Face frame", "Tip-over")
"""The lines of the sample case that take something of it, directly or through others."""


def cases():
    """A project with the lines of ten cases that take their readings from one alcove."""
    sample = sawside.handle({"do": "describe"})["case"]
    readings = [each for each in sample["entries"] if each["kind"] == "reading"]
    lines = [each for each in sample["entries"] if each["name"] in FOLLOWING]
    entries, number = [*readings], 1
    while len(entries) - len(readings) < LINES:
        entries += (_of_case(line, number) for line in lines)
        number += 1
    entries = [each | {"id": str(at)} for at, each in enumerate(entries, 1)]
    return sample | {"entries": entries, "next": len(entries) + 1}


def _of_case(line, number):
    """A line under the name of its case, which takes from lines of the same case alone."""
    called = "|".join(FOLLOWING)

    def own(text):
        return re.sub(rf"\[({called})(?=[:\]])", rf"[\1 {number}", text)

    values = {
        key: [own(each) for each in value] if isinstance(value, list) else own(value)
        for key, value in line["values"].items()
    }
    return line | {"name": f"{line['name']} {number}", "values": values}


def plain(document):
    """The same lines with the numbers themselves in the place of their names."""
    evaluation = Evaluation(read_document(document))
    worth = {}
    for identity, known in evaluation.graph.known.items():
        for written, call in known.calls.items():
            named = evaluation.worked[call.target.entry].named(call.target.answer)
            number, unit = named.value, "" if named.weight else " in"
            worth[identity, written] = f"({number.numerator}/{number.denominator}{unit})"

    def typed(identity, text):
        return re.sub(r"\[([^\]]*)\]", lambda found: worth[identity, found[1]], text)

    def of_line(each):
        values = {
            key: [typed(each["id"], one) for one in value]
            if isinstance(value, list)
            else typed(each["id"], value)
            for key, value in each["values"].items()
        }
        return each | {"values": values}

    entries = [of_line(each) if each["kind"] == "line" else each for each in document["entries"]]
    return document | {"entries": entries}


def case_recomputed(document):
    """Milliseconds until all lines are worked out again after other readings: the least."""
    now = read_document(document)
    times = []
    for number in range(1, ROUNDS + 1):
        entries = [
            each | {"text": f"{MEASURED[each['name']]} {number}/32"}
            if each["name"] in MEASURED
            else each
            for each in now["entries"]
        ]
        before = Evaluation(now).worked
        begun = time.perf_counter()
        after = Evaluation(now | {"entries": entries}).worked
        times.append(1000 * (time.perf_counter() - begun))
        again = [each for each in after if after[each] is not before[each]]
        assert len(again) == LINES + len(MEASURED), len(again)
        assert all(after[each].ok for each in again)
    return min(times)


def plain_worked_out(document):
    """Milliseconds until as many plain lines are worked out, nothing remembered: the least."""
    times = []
    for _ in range(ROUNDS):
        forget()
        now = read_document(document)
        begun = time.perf_counter()
        worked = Evaluation(now).worked
        times.append(1000 * (time.perf_counter() - begun))
        assert all(each.ok for each in worked.values())
    return min(times)


def compared():
    """Milliseconds for the cases and for the plain lines, by turns: what else the machine does
    slows both."""
    linked = cases()
    alone = plain(linked)
    turns = [(case_recomputed(linked), plain_worked_out(alone)) for _ in range(TURNS)]
    case, without = (min(times) for times in zip(*turns, strict=True))
    return {"case": case, "plain": without}
