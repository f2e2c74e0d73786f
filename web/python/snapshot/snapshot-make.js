/** Make a snapshot of a fresh, warmed core and store it. Nothing of the person's is in it. */

import { TRIAL_QUESTION } from "../protocol.js";
import { packURL, readFile, readPack } from "../start/pack.js";
import { openDoor, startPython, unpackWheels } from "../start/runtime.js";
import { packPages } from "./snapshot-pages.js";
import { keepSnapshot } from "./snapshot-store.js";

export async function makeSnapshot() {
  const pack = await readPack();
  const pyodide = await startPython({
    lockFileContents: pack.lock,
    stdLibURL: packURL(pack.library),
    _makeSnapshot: true,
    env: { PYTHONHASHSEED: "0" },
  });
  await unpackWheels(pyodide, pack);
  pyodide.runPython(new TextDecoder().decode(await readFile("warm.py")));
  const handle = openDoor(pyodide);
  const trial = handle(TRIAL_QUESTION);
  // An object of the page's that is alive in Python can't be restored.
  handle.destroy();
  pyodide.runPython("import gc; gc.collect()");
  const snapshot = /** @type {Uint8Array<ArrayBuffer>} */ (pyodide.makeMemorySnapshot());
  const size = pyodide._module.HEAPU8.length;
  // What comes before the memory is Pyodide's own account of what must be set up around it.
  const header = snapshot.slice(0, snapshot.length - size);
  const code = pack.files["pyodide.asm.wasm"].sha256;
  const pages = await packPages(snapshot.subarray(header.length));
  await keepSnapshot(pages, { build: pack.build, code, header: [...header], size, trial });
}
