// A worker that starts either way, and tries what Python can import before settling and after.
import { settle } from "../../../web/python/snapshot/settle.js";
import { addRest, slowStart } from "../../../web/python/start/slow-start.js";
import { makeSnapshot } from "../../../web/python/snapshot/snapshot-make.js";
import { snapshotAhead } from "../../../web/python/snapshot/snapshot-ahead.js";
import { restoreSnapshot } from "../../../web/python/snapshot/snapshot-restore.js";

const USE = `
def use():
    import xml.dom.minidom, tomllib, difflib  # of the rest of the library
    import fractions, random  # of what the snapshot holds
    from importlib import metadata, resources
    import pint.registry_helpers
    text = resources.files("sawside.lengths").joinpath("units.txt").read_text("utf-8")
    named = [file for each in metadata.distributions() for file in each.files]
    assert len(named) > 300 and all(file.locate().is_file() for file in named)
    return [metadata.version("pint"), "inch" in text, tomllib.loads("a = 1")["a"]]
import json
try:
    said = json.dumps(use())
except Exception as error:
    said = json.dumps(f"{type(error).__name__}: {error}")
said
`;

const ways = {
  async snapshot() {
    await makeSnapshot();
    const ahead = await snapshotAhead();
    await ahead.code; // the page's part, done before the worker's begins
    return restoreSnapshot(ahead);
  },

  async slow() {
    const core = await slowStart(() => {});
    await addRest(core, () => {});
    return core;
  },
};

async function probe(way) {
  const core = { way, ...(await ways[way]()) };
  const before = JSON.parse(core.pyodide.runPython(USE));
  await settle(core);
  const after = JSON.parse(core.pyodide.runPython(USE));
  return { before, after };
}

const both = async () => ({ slow: await probe("slow"), snapshot: await probe("snapshot") });

both().then(
  (seen) => self.postMessage(seen),
  (error) => self.postMessage({ failed: String(error) }),
);
