#!/usr/bin/env python3
"""Build, serve and test Sawside with nothing but Python 3.11 or newer.

Each step lives in `web/build/`; see its docstring. Everything made lies in ignored dot-folders.
"""

import argparse
import os
import subprocess
import sys
from pathlib import Path

if sys.version_info < (3, 11):  # noqa: UP036 (an older Python must be told so)
    sys.exit("Sawside needs Python 3.11 or newer.")

from web.build import browsers, debian, environment, serving, site, style

ROOT = Path(__file__).resolve().parent
PORT = 8000
# The slow files first, so that both workers are busy to the end.
TESTS = [f"tests/{name}" for name in ("engines", "browser", "build", "core")]
SPREAD = ["-n", "2", "--dist", "loadfile", "--no-loadscope-reorder"]


def serve(arguments: argparse.Namespace) -> int:
    """Build what has changed and serve it on this machine until Ctrl-C."""
    folder = site.build(environment.ready())
    try:
        server = serving.Server(folder, arguments.port)
    except OSError:
        print(f"Port {arguments.port} is taken. Choose another, as with --port {PORT + 80}.")
        return 1
    print(f"Sawside is at {server.address} (Ctrl-C stops it)", flush=True)
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        print()
    return 0


def build_site(_arguments: argparse.Namespace) -> int:
    """Write the static site into .site, for any static host with HTTPS."""
    print(f"The site is in {site.build(environment.ready())}")
    return 0


def test(arguments: argparse.Namespace) -> int:
    """Run every test, browsers included; paths and options are passed on to pytest."""
    tools = environment.ready(tests=True)
    browsers.ready()
    site.build(tools)
    given = arguments.pytest
    chosen = [each for each in given if Path(each.split("::")[0]).exists()]
    settings = ["-c", "pycore/pyproject.toml", "--rootdir", ROOT, *SPREAD]
    return _run_python(tools, "-m", "pytest", *settings, *given, *([] if chosen else TESTS))


def bench(arguments: argparse.Namespace) -> int:
    """Measure start-up and keys, and write the numbers as one flat JSON object."""
    tools = environment.ready(tests=True)
    browsers.ready()
    site.build(tools)
    return _run_python(tools, "-m", "tests.bench", "--json", arguments.json.resolve())


def format_code(_arguments: argparse.Namespace) -> int:
    """Bring all code into the one form, and name what must be mended by hand."""
    return 0 if style.mend(environment.ready(tests=True)) else 1


def _run_python(tools: environment.Environment, *command: str | Path) -> int:
    variables = {**os.environ, **tools.variables, "PYTHONPATH": f"{ROOT}:{ROOT / 'pycore'}"}
    return subprocess.run([tools.python, *command], cwd=ROOT, env=variables, check=False).returncode


def main() -> int:
    """Read the command line, do the one thing asked, return the exit code."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    commands = parser.add_subparsers(required=True, metavar="COMMAND")

    def add(name: str, action: object) -> argparse.ArgumentParser:
        command = commands.add_parser(name, help=action.__doc__, description=action.__doc__)
        command.set_defaults(action=action)
        return command

    add("serve", serve).add_argument("--port", type=int, default=PORT, metavar="N")
    add("test", test)
    add("site", build_site)
    add("bench", bench).add_argument("--json", type=Path, required=True, metavar="FILE")
    add("format", format_code)
    arguments, rest = parser.parse_known_args()
    if rest and arguments.action is not test:
        parser.error(f"unknown: {' '.join(rest)}")
    arguments.pytest = rest
    try:
        return arguments.action(arguments)
    except debian.NotInstalledError as reason:
        print(reason, file=sys.stderr)
    except subprocess.CalledProcessError as failed:
        print(f"This step failed (see above): {' '.join(failed.cmd)}", file=sys.stderr)
    return 1


if __name__ == "__main__":
    sys.exit(main())
