"""The door called at random, on real projects that change by it, and what must hold.

Used by the tests with ten thousand calls, by the bench with a million. A `Session` is begun from a
number; the same number makes the same calls.
"""

import json
import random
import time
from collections import Counter

import sawside
from sawside.errors import KINDS, Refusal
from sawside.project.kinds.entries import read_entry
from sawside.project.schema.cache import forget
from tests.core.door.messages_at_random import MESSAGES, SAMPLE
from tests.core.door.typed_at_random import QUESTIONS, settings, spoiled

CALLS = 200
"""Of one session."""

MOST_ENTRIES = 30
_KINDS = KINDS.keys() - {"internal"}
_WAYS = [*MESSAGES]
_SHARES = [share for share, _ in MESSAGES.values()]


class Session:
    """A project, a tally and what is done to them: `faults` are (message, what was wrong).

    `seen` counts what was answered: by message, question and act; `slowest` is the longest that an
    answer took, in seconds, with its message.
    """

    def __init__(self, number):
        self.chance = random.Random(f"door {number}")
        self.document, self.tally, self.undos, self.names = None, None, [], []
        self.faults, self.seen, self.slowest = [], Counter(), (0, None)
        forget()
        self._open()

    def run(self, calls=CALLS):
        """Make so many calls; gives the session itself."""
        for _ in range(calls):
            self.call(self.message())
        return self

    def message(self):
        """The next message, at times with one place in it that is something else."""
        do = self.chance.choices(_WAYS, _SHARES)[0]
        message = {"do": do} | MESSAGES[do][1](self)
        if self.chance.random() < 0.25:
            message["settings"] = settings(self.chance)
        if self.chance.random() < 0.08:
            message = spoiled(self.chance, json.loads(json.dumps(message)))
        return message

    def call(self, message):
        """Send it, see what is wrong with the answer, and go on from there."""
        begun = time.perf_counter()
        if self.chance.random() < 0.5:
            answer = json.loads(sawside.handle_json(json.dumps(message)))
        else:
            answer = sawside.handle(message)
        taken = time.perf_counter() - begun
        if taken > self.slowest[0]:
            self.slowest = taken, message
        wrong = faults(answer)
        self.faults += [(message, each) for each in wrong]
        if answer["ok"] and not wrong:
            self._learn(message, answer)

    def _learn(self, message, answer):
        do, act = message["do"], message.get("act")
        self.seen[do] += 1
        if do in ("reckon", "paper"):
            self.seen[message["reckoner"]] += 1
        if act and do in ("change", "tally"):
            self.seen[f"{do}: {act['act']}"] += 1
        if do == "tally":
            self.tally = answer["tally"]
        elif answer.get("document"):
            self._accept(answer)
        elif do == "plan" and answer["act"]:
            self.undos.append(answer["act"])  # an act to be done at some time, as an undo is

    def _accept(self, answer):
        """Go on with another document, as the page does once a change was accepted."""
        if len(answer["document"]["entries"]) > MOST_ENTRIES:
            self._open()
            return
        self.document = answer["document"]
        if answer.get("undo"):
            self.undos.append(answer["undo"])
        self.names = []
        for entry in self.document["entries"]:
            self.names.append(f"[{entry['name']}]")
            if entry.get("reckoner") in QUESTIONS:
                answers = QUESTIONS[entry["reckoner"]]["answers"]
                label = self.chance.choice(answers)["label"]
                self.names += [f"[{entry['name']}: {label}]", f"[{entry['name']}: {label} 1]"]

    def _open(self):
        """Another project: an empty one, or one with something of everything."""
        self.undos, self.tally = [], None
        if self.chance.random() < 0.5:
            self._accept({"document": SAMPLE})
        else:
            act = {"act": "begin", "name": "Record cabinet"}
            self._accept(sawside.handle({"do": "change", "act": act}))


def faults(answer):
    """What is wrong with an answer: a list of sentences."""
    return [*_faults(answer)]


def _faults(answer):
    try:
        written = json.dumps(answer, allow_nan=False)
    except (TypeError, ValueError) as fault:
        yield f"is no JSON: {fault}"
        return
    if not answer["ok"]:
        for error in (answer["error"], *answer.get("more", ())):
            if error["kind"] not in _KINDS:
                yield f"ended as {error['kind']}: {error['remedy']}"
            elif not (error["message"] and error["remedy"]):
                yield f"says nothing: {error}"
    elif answer.get("document"):
        yield from _unreadable(json.loads(written)["document"])


def _unreadable(document):
    """What is wrong with a document that was given, as one that comes back from a file.

    Each entry is read for itself as well, for the core remembers those that it made.
    """
    try:
        for entry in document["entries"]:
            read_entry(entry)
    except Refusal as refusal:
        yield f"gave an entry that is refused: {refusal}"
    said = sawside.handle({"do": "csv", "document": document, "what": "cuts"})
    if not said["ok"]:
        yield f"gave a document that is refused: {said['error']}"
