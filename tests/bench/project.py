"""How quickly a project follows a correction inside Pyodide, and how files gone wrong are met."""

import json
import subprocess
from pathlib import Path

from tests.bench import recompute
from tests.core.hostile import crashes

FILES = 10_000


def measure():
    """Return project.recompute_500_ms and its like (node's Pyodide), hostile.files and .crashes."""
    times = _inside_pyodide()
    found = crashes(FILES, "bench")
    for message, fault in found[:20]:
        print(f"hostile: {message}: {fault}", flush=True)
    questions, sums = times["questions"], times["sums"]
    return {
        "project.recompute_500_ms": questions["500"],
        "project.recompute_5000_over_500": questions["5000"] / questions["500"],
        "project.recompute_500_sums_ms": sums["500"],
        "project.recompute_5000_over_500_sums": sums["5000"] / sums["500"],
        "project.change_500_ms": questions["message"],
        "project.change_500_sums_ms": sums["message"],
        "hostile.files": FILES,
        "hostile.crashes": len(found),
    }


def _inside_pyodide():
    root = Path(__file__).parents[2]
    runtime, wheels = root / "web/node_modules/pyodide", root / ".site/python/wheels"
    script = root / "tests/bench/inside_pyodide.mjs"
    command = ["node", script, runtime, wheels, recompute.__file__, "recomputed()"]
    return json.loads(subprocess.run(command, check=True, capture_output=True).stdout)
