"""A core gets the files that its start did without, in idle time."""

import json
import shutil
import subprocess
from pathlib import Path

from tests.browser.start.start_support import open_at
from web.build import serving

ROOT = Path(__file__).resolve().parents[3]
ESBUILD = ROOT / "web/node_modules/.bin/esbuild"
RUN = """
() => new Promise((resolve, reject) => {
  const worker = new Worker("settle_probe.js", { type: "module" });
  worker.onmessage = ({ data }) => (data.failed ? reject(data.failed) : resolve(data));
  worker.onerror = () => reject("The probe did not run.");
})
"""


def test_after_settling_every_module_and_every_file_of_the_wheels_is_there(phone, site, tmp_path):
    folder = tmp_path / "site"
    folder.mkdir()
    shutil.copytree(site / "python", folder / "python")
    (folder / "index.html").write_text("<!doctype html><title>Probe</title>")
    probe = Path(__file__).with_name("settle_probe.js")
    made = ["--bundle", "--format=esm", "--target=es2022", f"--outfile={folder / probe.name}"]
    code = json.loads((site / "python/pack.json").read_text())["files"]["pyodide.asm.wasm"]
    made.append(f'--define:RUNTIME_CODE="{code["sha256"]}"')
    subprocess.run([ESBUILD, probe, *made, "--log-level=warning"], check=True)
    with serving.started(folder) as server:
        seen = open_at(phone(), server.address).evaluate(RUN)
    for way in ("slow", "snapshot"):
        assert "Error: " in seen[way]["before"], way
        assert seen[way]["after"] == ["0.25.3", True, 1], way
