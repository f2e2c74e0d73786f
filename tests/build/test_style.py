"""All code has the one form that `python3 build.py format` writes."""

import os
import subprocess

import pytest

from web.build import environment, style

COMMANDS = style.commands(mend=False)


@pytest.mark.parametrize(
    ("command", "folder"), COMMANDS, ids=[" ".join(command[:3]) for command, _folder in COMMANDS]
)
def test_nothing_is_left_to_mend(command, folder):
    """Remedy: `python3 build.py format`, and by hand what it then still names."""
    variables = {**os.environ, **environment.ready(tests=True).variables}
    done = subprocess.run(
        command, cwd=folder, env=variables, capture_output=True, text=True, check=False
    )
    code, said = done.returncode, done.stdout + done.stderr
    assert code == 0, said
