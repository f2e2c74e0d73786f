// A worker that makes a snapshot, restores it, and tries what Python can import before settling and after.
import { settle } from "../../web/python/settle.js";
import { makeSnapshot } from "../../web/python/snapshot-make.js";
import { snapshotAhead } from "../../web/python/snapshot-ahead.js";
import { restoreSnapshot } from "../../web/python/snapshot-restore.js";

const USE = `
def use():
    import xml.dom.minidom, tomllib, difflib  # of the rest of the library
    import fractions, random  # of what the snapshot holds
    from importlib import metadata, resources
    import pint.registry_helpers
    text = resources.files("sawside.lengths").joinpath("units.txt").read_text("utf-8")
    return [metadata.version("pint"), "inch" in text, tomllib.loads("a = 1")["a"]]
import json
try:
    said = json.dumps(use())
except Exception as error:
    said = json.dumps(f"{type(error).__name__}: {error}")
said
`;

async function probe() {
  await makeSnapshot();
  const ahead = await snapshotAhead();
  await ahead.code; // the page's part, done before the worker's begins
  const core = { way: "snapshot", ...(await restoreSnapshot(ahead)) };
  const before = JSON.parse(core.pyodide.runPython(USE));
  await settle(core);
  const after = JSON.parse(core.pyodide.runPython(USE));
  return { before, after };
}

probe().then(
  (seen) => self.postMessage(seen),
  (error) => self.postMessage({ failed: String(error) }),
);
