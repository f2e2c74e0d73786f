"""What Python uses: the modules it has, and the files that it reads of what is installed.

Runs inside Pyodide, started by interpreter.mjs before anything is installed.
"""

import sys

LIBRARY = "/lib/python314.zip/"
SITE = "/lib/python3.14/site-packages/"

opened = set()


def note(event, given):
    """Note each file that is opened to be read; imports read theirs so, and what packages keep."""
    if event == "open" and isinstance(given[0], str) and given[1] in (None, "r", "rb"):
        opened.add(given[0])


sys.addaudithook(note)


def files_read():
    """The installed files read so far, by their names inside the wheels."""
    return sorted(name.removeprefix(SITE) for name in opened if name.startswith(SITE))


def modules():
    """The names of all modules that are there."""
    return sorted(sys.modules)


def library_files():
    """The files of the standard library that the modules came from."""
    origins = [getattr(each.__spec__, "origin", None) or "" for each in list(sys.modules.values())]
    return sorted(each.removeprefix(LIBRARY) for each in origins if each.startswith(LIBRARY))
