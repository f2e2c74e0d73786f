"""The wheels that the browser's Python loads: the core's own, and the locked ones it needs."""

import shutil
from pathlib import Path

from web.build import steps
from web.build.environment import Environment

BROWSER_PYTHON = "3.14"


def collect(root: Path, environment: Environment) -> Path:
    """Make `.build/wheels` under `root` from `pycore/` and the lock; return that folder."""
    fetched = _fetch(root, environment)
    backend = root / "web/requirements.txt"
    key = steps.fingerprint([root / "pycore/pyproject.toml", root / "pycore/sawside", backend])

    def pack(folder: Path) -> None:
        print("Packing the core", flush=True)
        # The backend is installed from our lock; nothing is fetched here.
        environment.run(
            environment.python,
            "-m",
            "pip",
            "wheel",
            "--quiet",
            "--no-index",
            "--no-deps",
            "--no-build-isolation",
            "--wheel-dir",
            folder,
            root / "pycore",
        )

    core = root / ".build/core"
    steps.made(core, key, pack)

    def gather(folder: Path) -> None:
        for wheel in (*fetched.glob("*.whl"), *core.glob("*.whl")):
            shutil.copy(wheel, folder)

    wheels = root / ".build/wheels"
    steps.made(wheels, steps.fingerprint([fetched, core]), gather)
    return wheels


def _fetch(root: Path, environment: Environment) -> Path:
    lock = root / "web/python-packages.txt"

    def fetch(folder: Path) -> None:
        print("Fetching the browser's Python packages", flush=True)
        # Pure Python only: nothing compiled for this machine may reach the browser.
        pure = ["--only-binary=:all:", "--platform=any", "--implementation=py", "--abi=none"]
        environment.run(
            environment.python,
            "-m",
            "pip",
            "download",
            "--quiet",
            "--require-hashes",
            "--no-deps",
            *pure,
            f"--python-version={BROWSER_PYTHON}",
            "--dest",
            folder,
            "--requirement",
            lock,
        )

    folder = root / ".build/fetched"
    steps.made(folder, steps.fingerprint([lock]), fetch)
    return folder
