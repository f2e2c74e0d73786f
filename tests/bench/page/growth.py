"""What more questions cost a start: a build with each of them twice, beside the build itself."""

import re
import shutil
import tempfile
import time
from pathlib import Path
from statistics import median

from sawside.reckoners import RECKONERS
from tests.bench.page import chromium
from tests.bench.page.look import marked, way
from tests.bench.page.relaunch import ROUNDS, SETTLED
from tests.browser.start.start_support import FIRST_ANSWER, SNAPSHOT_KEPT
from web.build import serving, site
from web.build.environment import ROOT, ready

KEPT = """
async () => {
  const cache = await caches.open("python-snapshot");
  const kept = await cache.match((await cache.keys())[0]);
  return (await kept.arrayBuffer()).byteLength;
}
"""


def measure():
    """Yield start.snapshot_mb, and start.relaunch_growth, the doubled build's over ours."""
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder)
        doubled = site.build(ready(), doubled_tree(work / "tree"))
        times = {ROOT / ".site": [], doubled: []}
        addresses = {}
        for each in times:
            with serving.started(each) as server, open_phone(work, each) as page:
                page.goto(server.address)
                marked(page, SNAPSHOT_KEPT)
                addresses[each] = server.address
                if each != doubled:
                    yield "start.snapshot_mb", page.evaluate(KEPT) / 1e6
        for _round in range(ROUNDS):
            for each, milliseconds in times.items():
                with open_phone(work, each) as page:
                    time.sleep(SETTLED)
                    page.goto(addresses[each])
                    milliseconds.append(marked(page, FIRST_ANSWER))
                    assert way(page) == "snapshot"
    ours, twice = (median(each) for each in times.values())
    print("growth", *([*map(round, each)] for each in times.values()), flush=True)
    yield "start.relaunch_growth", twice / ours


def open_phone(work, build):
    """Open a phone of that build's own."""
    return chromium.open_phone(work / ("ours" if build.parent == ROOT else "doubled"))


def doubled_tree(tree):
    """Lay a copy of the sources under `tree`, with every question once more by another key."""
    for name in ("web", "pycore"):
        shutil.copytree(ROOT / name, tree / name, symlinks=True, ignore=_left_out)
    (tree / "web/node_modules").symlink_to(ROOT / "web/node_modules")
    doubled = 0
    for question in (tree / "pycore/sawside/reckoners").glob("*/*.py"):
        text = question.read_text(encoding="utf-8")
        key = re.search(r'^    key="(\w+)",$', text, re.MULTILINE)
        if key and question.stem == key[1]:
            more = text.replace(f'key="{key[1]}"', f'key="{key[1]}_again"')
            question.with_name(f"{key[1]}_again.py").write_text(more, encoding="utf-8")
            doubled += 1
    assert doubled == len(RECKONERS), "not every question was doubled"
    return tree


def _left_out(_folder, names):
    return {"node_modules", "__pycache__"} & set(names)
