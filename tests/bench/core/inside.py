"""What a measure tells inside Pyodide: node's engine is Chromium's."""

import json
import subprocess
from pathlib import Path

_ROOT = Path(__file__).parents[3]


def inside_pyodide(source, call):
    """What a call of the Python file `source` gives there, where nothing but the core is at hand.

    The site has to be built, for its wheels are installed.
    """
    runtime, wheels = _ROOT / "web/node_modules/pyodide", _ROOT / ".site/python/wheels"
    script = Path(__file__).with_name("inside_pyodide.mjs")
    command = ["node", script, runtime, wheels, source, call]
    return json.loads(subprocess.run(command, check=True, stdout=subprocess.PIPE).stdout)
