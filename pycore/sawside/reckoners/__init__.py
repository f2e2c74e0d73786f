"""One file for each question, in the folder of its subject.

A file that declares `RECKONER` is found by being in such a folder; it says itself which of the jobs
(`jobs.py`) it is listed under. No question imports another; what several share is in the `shared`
of their subject, or in the one beside the subjects. Imports: up to drawing.
"""

from collections.abc import Mapping
from functools import cached_property
from importlib import import_module
from pkgutil import iter_modules

from sawside.reckoners.jobs import JOBS

_SHARED = "shared"


class _Reckoners(Mapping):
    """Reckoners by key, which is their file's name; a file is read when it is first asked for.

    So the first answer of all waits for one question at most.
    """

    @cached_property
    def _folders(self):
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
        jobs = list(JOBS)
        return sorted(self._folders, key=lambda key: (jobs.index(self[key].job), self[key].order))

    def __getitem__(self, key):
        return import_module(f"{__name__}.{self._folders[key]}.{key}").RECKONER

    def __iter__(self):
        return iter(self._offered)

    def __len__(self):
        return len(self._folders)


RECKONERS = _Reckoners()
"""Every reckoner by its key, in the order in which they are offered."""
