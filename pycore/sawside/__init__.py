"""Sawside's calculation core: shop lengths, exact, behind one door.

Layers, each importing only what stands to the left of it:

    version, contract, errors <- needs, moments <- lengths <- settings, geometry, wood, boards
        <- drawing <- reckoners <- reckoning <- project <- tally <- messages <- door

Nothing here knows the browser. A file is read when it is first needed, as the door and `reckoners`
say; once every message has been answered once, no file is needed any more.
"""

from sawside.door import handle, handle_json
from sawside.version import VERSION

__version__ = VERSION

__all__ = ["__version__", "handle", "handle_json"]
