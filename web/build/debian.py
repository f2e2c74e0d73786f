"""Packages from Debian: installed where we may, else named in the one command to type."""

import os
import shutil
import subprocess
from collections.abc import Sequence


class NotInstalledError(Exception):
    """Something is missing that only the machine's owner can install; the text says how."""


def missing(packages: Sequence[str]) -> list[str]:
    """Return those of `packages` that dpkg does not have installed."""
    status = ["dpkg-query", "--show", "--showformat=${Package} ${db:Status-Status}\\n", *packages]
    listed = subprocess.run(status, capture_output=True, text=True, check=False).stdout.split("\n")
    return [each for each in packages if f"{each} installed" not in listed]


def install(packages: Sequence[str]) -> None:
    """See that `packages` are installed.

    Raises NotInstalledError with the command to type when this user may not install, or when the
    machine is no Debian.
    """
    if not shutil.which("dpkg-query"):
        raise NotInstalledError(f"This needs Debian, with the packages {' '.join(packages)}.")
    wanted = missing(packages)
    if not wanted:
        return
    command = ["apt-get", "install", "--yes", "--no-install-recommends", *wanted]
    if os.geteuid() != 0:
        raise NotInstalledError(f"Missing. Type: sudo {' '.join(command)}")
    quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    print(f"Installing {' '.join(wanted)}", flush=True)
    for each in (["apt-get", "update", "--quiet=2"], command):
        done = subprocess.run(each, env=quiet, stdout=subprocess.DEVNULL, check=False)
        if done.returncode:
            raise NotInstalledError(f"This failed (see above): {' '.join(each)}")
