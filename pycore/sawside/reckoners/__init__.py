"""One file for each question, in the folder of its subject, which says its heading and its place.

A file that declares `RECKONER` is found by being in such a folder. No question imports another;
what several share is in the `shared` of their subject, or in the one beside the subjects. Imports:
up to drawing.
"""

from collections.abc import Mapping
from functools import cached_property
from importlib import import_module
from pkgutil import iter_modules

_SHARED = "shared"


class _Reckoners(Mapping):
    """Reckoners by key, which is their file's name; a file is read when it is first asked for.

    So the first answer of all waits for one question at most.
    """

    @cached_property
    def _subjects(self):
        """The folder of each question by the question's key."""
        folders = [each.name for each in iter_modules(__path__) if each.ispkg]
        return {
            question.name: folder
            for folder in folders
            if folder != _SHARED
            for question in iter_modules([f"{path}/{folder}" for path in __path__])
            if question.name != _SHARED
        }

    @cached_property
    def _offered(self):
        return sorted(self._subjects, key=lambda key: (self.subject(key).PLACE, self[key].order))

    def subject(self, key):
        """The package of the question's subject: its `HEADING`, and its `PLACE` among them."""
        return import_module(f"{__name__}.{self._subjects[key]}")

    def __getitem__(self, key):
        return import_module(f"{self.subject(key).__name__}.{key}").RECKONER

    def __iter__(self):
        return iter(self._offered)

    def __len__(self):
        return len(self._subjects)


RECKONERS = _Reckoners()
"""Every reckoner by its key, in the order in which they are offered."""
