"""Sawside's calculation core: shop lengths, exact, behind one door.

Layers, each importing only what stands to the left of it:

    errors <- lengths <- geometry, wood <- drawing <- reckoners <- reckoning <- project <- door

Nothing here knows the browser, and all files are read at import: afterwards no file is needed.
"""

from sawside.door import VERSION, handle, handle_json

__version__ = VERSION

__all__ = ["__version__", "handle", "handle_json"]
