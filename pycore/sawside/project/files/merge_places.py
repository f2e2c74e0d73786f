"""Which entries of a backup are in a project already, and under what names the others are added.

What is here under the same name, or under a numbered one, with the content that it would be added
with, is here already: a merge that is done again adds nothing.
"""

from sawside.project.acts.arrange import calling
from sawside.project.evaluation.graph import Graph
from sawside.project.files.merge_settings import base_of, numbered_name
from sawside.project.kinds.checks import MOST_NAME
from sawside.project.kinds.entries import kind_of


class Places:
    """For each entry of `other`, by its id: `here`, the id that it has in the document already, or
    `added`, the entry as it is to be added.

    An entry comes after what it uses, so that it calls that as it is called here. What has other
    content under the same name gets a numbered one, and so does what is here under its own name but
    uses such an entry. `owned` are the new names of tapes and materials.
    """

    def __init__(self, document, other, owned):
        self.here, self.added = {}, {}
        self._names, self._used = {}, set()
        self._entries = {
            each["id"]: kind_of(each).with_own(each, owned) for each in other["entries"]
        }
        theirs = {each["name"].casefold() for each in self._entries.values()}
        self._document = {each["name"].casefold(): each for each in document["entries"]}
        self._taken = theirs | self._document.keys()
        self._numbered = {}
        for name, entry in self._document.items():
            if name not in theirs:
                self._numbered.setdefault(base_of(name), []).append(entry)
        self._graph = Graph(other | {"entries": [*self._entries.values()]})
        for identity in dict.fromkeys([*self._graph.links.order, *self._entries]):
            self._place(identity)

    def _place(self, identity):
        entry = self._called(self._entries[identity])
        found = self._found(entry)
        if found is not None:
            self.here[identity] = found["id"]
            self._used.add(found["id"])
            name = found["name"]
        else:
            name = entry["name"]
            if name.casefold() in self._document:
                name = numbered_name(name, self._taken, MOST_NAME)
                self._taken.add(name.casefold())
            self.added[identity] = entry | {"name": name}
        if name.casefold() != entry["name"].casefold():
            self._names[identity] = name

    def _called(self, entry):
        """An entry that calls the others by their new names."""
        if self._names.keys().isdisjoint(self._graph.links.uses.get(entry["id"], ())):
            return entry
        return calling(entry, self._graph, self._names)

    def _found(self, entry):
        """The entry of the document that has this content; None where there is none."""
        own = self._document.get(entry["name"].casefold())
        if own is None or _content(own) == _content(entry):
            return own
        for each in self._numbered.get(entry["name"][: MOST_NAME - 10].casefold(), ()):
            if each["id"] not in self._used and _content(each) == _content(entry):
                return each
        return None


def _content(entry):
    return {key: value for key, value in entry.items() if key not in ("id", "name")}
