"""One file for each question. A file that declares `RECKONER` is found by being in this folder.

No question imports another; what several share is in `shared`. Imports: up to drawing.
"""

from collections.abc import Mapping
from functools import cached_property
from importlib import import_module
from pkgutil import iter_modules

_NO_QUESTIONS = {"declaration", "shared"}


class _Reckoners(Mapping):
    """Reckoners by key, which is their file's name; a file is read when it is first asked for.

    So the first answer of all waits for one question at most.
    """

    @cached_property
    def _files(self):
        return {module.name for module in iter_modules(__path__)} - _NO_QUESTIONS

    @cached_property
    def _offered(self):
        every = [self[key] for key in sorted(self._files)]
        return [each.key for each in sorted(every, key=lambda each: (each.order, each.key))]

    def __getitem__(self, key):
        if key not in self._files:
            raise KeyError(key)
        return import_module(f"{__name__}.{key}").RECKONER

    def __iter__(self):
        return iter(self._offered)

    def __len__(self):
        return len(self._files)


RECKONERS = _Reckoners()
"""Every reckoner by its key, in the order in which they are offered."""
