"""The whole static site in `.site/`: the bundled page, the browser's Python, the kept files."""

import shutil
from pathlib import Path

from web.build import core_wheels, precache, sizes, steps
from web.build.environment import ROOT, Environment

# As they are, beside what the bundler writes.
COPIED = ["index.html", "manifest.webmanifest", "icons"]


def build(environment: Environment, root: Path = ROOT) -> Path:
    """Make `.site` under `root` if anything that it is made from has changed; return it.

    What is unchanged is taken from `.build`. Prints what a first visit loads when it is new.
    """
    with steps.one_at_a_time(root / ".build"):
        bundle = _bundle(root, environment)
        python = _pack_python(root, environment)
        copied = [root / "web" / name for name in COPIED]
        site = root / ".site"

        def assemble(folder: Path) -> None:
            shutil.copytree(bundle, folder, dirs_exist_ok=True)
            shutil.copytree(python, folder / "python")
            for source in copied:
                copy = shutil.copytree if source.is_dir() else shutil.copy
                copy(source, folder / source.name)
            version = precache.write(folder)
            print(f"{sizes.report(folder)}\nVersion {version}", flush=True)

        rules = [root / "web/build" / name for name in ("site.py", "precache.py")]
        key = steps.fingerprint([bundle, python, *copied, *rules])
        steps.made(site, key, assemble, work=root / ".build")
    return site


def _bundle(root: Path, environment: Environment) -> Path:
    web = root / "web"
    script = web / "build/bundle.mjs"
    sources = [each for each in sorted(web.glob("*")) if each.name not in ("build", "node_modules")]

    def bundle(folder: Path) -> None:
        print("Bundling the page", flush=True)
        environment.run("node", script, web, folder)

    folder = root / ".build/bundle"
    steps.made(folder, steps.fingerprint([*sources, script]), bundle)
    return folder


def _pack_python(root: Path, environment: Environment) -> Path:
    wheels = core_wheels.collect(root, environment)
    scripts = sorted((root / "web/build").glob("pack-python*"))
    # The first question is asked by the page and by the packing.
    sources = [*scripts, root / "web/python/protocol.js", root / "web/package-lock.json", wheels]

    def pack(folder: Path) -> None:
        print("Packing the browser's Python", flush=True)
        environment.run(
            "node",
            root / "web/build/pack-python.mjs",
            "--pyodide",
            root / "web/node_modules/pyodide",
            "--wheels",
            wheels,
            "--out",
            folder,
        )

    folder = root / ".build/python"
    steps.made(folder, steps.fingerprint(sources), pack)
    return folder
