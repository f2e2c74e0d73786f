"""One file for each question. A file that declares `RECKONER` is found by being in this folder.

No question imports another; what several share has no `RECKONER`. Imports: up to drawing.
"""

from importlib import import_module
from pkgutil import iter_modules


def _found():
    for module in iter_modules(__path__):
        reckoner = getattr(import_module(f"{__name__}.{module.name}"), "RECKONER", None)
        if reckoner is not None:
            yield reckoner


RECKONERS = {
    reckoner.key: reckoner
    for reckoner in sorted(_found(), key=lambda reckoner: (reckoner.order, reckoner.key))
}
"""Every reckoner by its key, in the order in which they are offered."""
