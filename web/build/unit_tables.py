"""What pint makes of the core's units, as a start reads it: `pycore/sawside/lengths/units.json`.

`python3 build.py format` writes it again.
"""

import importlib
import json
import sys

from web.build.environment import ROOT

FILE = ROOT / "pycore/sawside/lengths/units.json"


def text() -> str:
    """Return the content of the file as `units.txt` is now."""
    tables = importlib.import_module("sawside.lengths.unit_definitions").tables()
    return json.dumps(tables, ensure_ascii=False, indent=1) + "\n"


def main(*arguments: str) -> int:
    """Write the file, or with `--check` return 1 where it is not what pint makes."""
    if "--check" not in arguments:
        FILE.write_text(text(), encoding="utf-8")
    elif FILE.read_text(encoding="utf-8") != text():
        print("units.json is not what pint makes of units.txt: python3 build.py format")
        return 1
    return 0


if __name__ == "__main__":
    sys.path.insert(0, str(ROOT / "pycore"))
    sys.exit(main(*sys.argv[1:]))
