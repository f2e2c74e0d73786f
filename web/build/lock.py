"""Renew the lock files from their `.in` files and `package.json`, with every hash.

Run as `python3 -m web.build.lock` when a version is to change; `--upgrade` takes the newest
that the `.in` files allow. One pint for both Pythons: the browser's lock is bound to the core's.
"""

import json
import sys
from pathlib import Path

from web.build import core_wheels
from web.build.environment import ROOT, ready

OLDEST_PYTHON = "3.11"
LOCKS = [
    ("pycore/requirements", OLDEST_PYTHON),
    ("web/requirements", OLDEST_PYTHON),
    ("web/python-packages", core_wheels.BROWSER_PYTHON),
    ("tests/requirements", OLDEST_PYTHON),
]


def main(options: list[str]) -> None:
    """Renew every lock file; `options` are passed on to uv."""
    environment = ready(tests=True, modules=False)
    for name, python in LOCKS:
        bound = [] if name.startswith("pycore") else ["--constraint", "pycore/requirements.txt"]
        environment.run(
            "uv",
            "pip",
            "compile",
            "--quiet",
            "--universal",
            "--generate-hashes",
            "--no-annotate",
            "--no-config",
            "--python-version",
            python,
            "--custom-compile-command",
            "python3 -m web.build.lock",
            *bound,
            *options,
            f"{name}.in",
            "--output-file",
            f"{name}.txt",
        )
    environment.run(environment.npm, "install", "--package-lock-only", folder=ROOT / "web")
    without_addresses(ROOT / "web/package-lock.json")


def without_addresses(lock: Path) -> None:
    """Take out where a package came from and where its makers ask for money: a hash is enough."""
    content = json.loads(lock.read_text(encoding="utf-8"))
    for package in content["packages"].values():
        package.pop("resolved", None)
        package.pop("funding", None)
    lock.write_text(json.dumps(content, indent=2, ensure_ascii=False) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1:])
