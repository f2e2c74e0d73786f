"""Whatever is done to a project can be taken back, and what is shown is always worked out anew."""

import copy
import json

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule
from projects import begun, change, lasting

import sawside
from sawside.project.schema.cache import forget

NAMES = st.sampled_from(["Top rail", "Stile", "Shelf", "top rail", "Side (left)", ""])
TEXTS = st.sampled_from(
    [
        "37 9/16",
        "3 + 1/2",
        "18 mm",
        "6' 2",
        "[Top rail] + 1",
        "Stile - 1/8",
        "2 × [Shelf]",
        "[Stile: Short side] ÷ 2",
        "Shelf 2 + [Side (left)]",
    ]
)
REFUSED = {"conflict", "missing", "unknown", "unreadable", "impossible", "range"}


class Undoing(RuleBasedStateMachine):
    """Any acts and undos, in any order."""

    @initialize()
    def begin(self):
        self.document = begun()
        self.done, self.undone = [], []

    def act(self, act, **more):
        before = copy.deepcopy(self.document)
        said = change(self.document, act, **more)
        assert self.document == before, "the given document stays as it is"
        if not said["ok"]:
            assert said["error"]["kind"] in REFUSED, said
            return
        self.done.append((before, said["undo"]))
        self.undone = []
        self.document = said["document"]

    def take_back(self, stack, other):
        meant, act = stack.pop()
        said = sawside.handle({"do": "change", "document": self.document, "act": act})
        assert said["ok"], said
        assert lasting(said["document"]) == lasting(meant)
        other.append((self.document, said["undo"]))
        self.document = said["document"]

    def some(self, data, kind=None):
        entries = [each for each in self.document["entries"] if kind in (None, each["kind"])]
        return data.draw(st.sampled_from(entries))["id"] if entries else "99"

    @rule(name=NAMES, text=TEXTS, side=st.sampled_from(["", "light"]))
    def keep_reading(self, name, text, side):
        self.act("keep_reading", name=name, text=text, side=side)

    @rule(name=NAMES, known=TEXTS, width=st.sampled_from(["2", "2 1/4", "[Shelf] ÷ 8"]))
    def keep_line(self, name, known, width):
        values = {"known": known, "width": width}
        self.act("keep_line", name=name, reckoner="mitered_length", values=values)

    @rule(text=st.sampled_from(["Glue up on Friday", ""]))
    def keep_note(self, text):
        self.act("keep_note", text=text)

    @rule(name=NAMES.filter(bool))
    def rename_project(self, name):
        self.act("rename_project", name=name)

    @rule(mark=st.sampled_from(["1/16", "1/64", "1 mm"]), unit=st.sampled_from(["in", "mm"]))
    def set(self, mark, unit):
        self.act("set", settings={"mark": mark, "unit": unit})

    @rule(text=st.sampled_from(["1/32", "0.5 mm", "", "-1"]))
    def tolerance(self, text):
        self.act("tolerance", text=text)

    @rule(columns=st.sampled_from(["2", "", "two"]), top=st.sampled_from(["1/2", ""]))
    def labels(self, columns, top):
        self.act("labels", values={"columns": columns, "top": top})

    @precondition(lambda self: self.document["entries"])
    @rule(data=st.data(), name=NAMES.filter(bool))
    def rename(self, data, name):
        self.act("rename", id=self.some(data), name=name)

    @precondition(lambda self: self.document["entries"])
    @rule(data=st.data(), to=st.integers(0, 3))
    def move(self, data, to):
        self.act("move", id=self.some(data), to=min(to, len(self.document["entries"]) - 1))

    @precondition(lambda self: self.document["entries"])
    @rule(data=st.data())
    def delete(self, data):
        self.act("delete", id=self.some(data))

    @precondition(lambda self: any(e["kind"] == "line" for e in self.document["entries"]))
    @rule(data=st.data(), by=st.sampled_from([1, 1, -1]))
    def cut(self, data, by):
        self.act("cut", id=self.some(data, "line"), part="piece", by=by)

    @precondition(lambda self: any(e["kind"] == "line" for e in self.document["entries"]))
    @rule(data=st.data())
    def at_the_saw(self, data):
        identity = self.some(data, "line")
        self.act("spoil", id=identity, part="piece")
        self.act("trial", id=identity, part="piece", measured="36 5/32 in")
        self.act("about", id=identity, part="piece", about={"grain": "long", "material": ""})
        self.act("recut", id=identity, part="piece", which=[0])

    @precondition(lambda self: any(e["kind"] == "reading" for e in self.document["entries"]))
    @rule(data=st.data(), text=TEXTS)
    def correct(self, data, text):
        self.act("correct", id=self.some(data, "reading"), text=text)

    @precondition(lambda self: any(e["kind"] == "reading" for e in self.document["entries"]))
    @rule(data=st.data(), where=st.sampled_from(["", "at the floor"]))
    def describe(self, data, where):
        self.act("describe", id=self.some(data, "reading"), where=where)

    @precondition(lambda self: self.done)
    @rule()
    def undo(self):
        self.take_back(self.done, self.undone)

    @precondition(lambda self: self.undone)
    @rule()
    def redo(self):
        self.take_back(self.undone, self.done)

    @invariant()
    def what_is_remembered_changes_no_answer(self):
        if not hasattr(self, "document"):
            return
        assert json.loads(json.dumps(self.document)) == self.document
        message = json.dumps({"do": "view", "document": self.document})
        remembered = sawside.handle_json(message)
        forget()
        assert sawside.handle_json(message) == remembered
        assert json.loads(remembered)["ok"], remembered

    def teardown(self):
        """Everything taken back gives the project as it was begun."""
        while getattr(self, "done", None):
            self.take_back(self.done, self.undone)
        while getattr(self, "undone", None):
            self.take_back(self.undone, self.done)


Undoing.TestCase.settings = settings(max_examples=30, stateful_step_count=20)
TestUndoing = Undoing.TestCase
