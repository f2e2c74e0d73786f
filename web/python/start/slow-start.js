/**
 * The slow start: the runtime, the library in use, and the wheels installed by micropip. The wheels
 * have only what the first answer needs; the rest of them follows when a question waits for it.
 */

import { download } from "./download.js";
import { packURL } from "./pack.js";
import { progress } from "./progress.js";
import { openDoor, startPython, unpackRest } from "./runtime.js";

/** @import { Pack, Progress, Running } from "../core.d.ts" */

const SCRIPT = "pyodide.asm.mjs";

/**
 * @param {(now: Progress) => void} onProgress hears of every change
 * @returns {Promise<Running>}
 */
export async function slowStart(onProgress) {
  const { tell, listener } = progress(onProgress, "Getting ready");
  const list = listener("pack.json");
  /** @type {Pack} */
  const pack = await download(packURL("pack.json"), { ...list, onBytes: () => list.onBytes(0) }).json();
  const streamed = ["pyodide.asm.wasm", pack.library, ...pack.wheels, pack.installer];
  tell({ total: [SCRIPT, ...streamed].reduce((sum, name) => sum + pack.files[name].size, 0) });

  const askNetwork = self.fetch;
  const begun = new Map(streamed.map((name) => [packURL(name), download(packURL(name), listener(name))]));
  // Pyodide and micropip fetch one after the other; all has been on its way since the line above.
  self.fetch = async (url, options) => begun.get(String(url)) ?? askNetwork(url, options);
  try {
    const pyodide = await startPython({ lockFileContents: pack.lock, stdLibURL: packURL(pack.library) });
    listener(SCRIPT).onBytes(pack.files[SCRIPT].size);
    tell({ step: "Almost ready" });
    await pyodide.loadPackage("micropip", { messageCallback() {} });
    const micropip = pyodide.pyimport("micropip");
    await micropip.install.callKwargs(pack.wheels.map(packURL), { deps: false });
    micropip.destroy();
    return { pyodide, pack, handle: openDoor(pyodide) };
  } finally {
    self.fetch = askNetwork;
  }
}

/**
 * Fetch what the first answer did without, and put it in place.
 * @param {Running} core
 * @param {(now: Progress) => void} onProgress hears of every change
 */
export async function addRest({ pyodide, pack }, onProgress) {
  const { tell, listener } = progress(onProgress, "Loading the rest");
  const { size, sha256 } = pack.files[pack.wheelsRest];
  tell({ total: size });
  const archive = await download(packURL(pack.wheelsRest), listener(pack.wheelsRest)).arrayBuffer();
  // Where the network was away for long, there may be another version of the site by now.
  if (digest(pyodide, archive) !== sha256) throw new Error("The rest is of another version.");
  unpackRest(pyodide, archive);
}

/** SHA-256 (hex) by Python: a page that has no HTTPS may not ask the browser for it. */
function digest(pyodide, bytes) {
  const content = pyodide.toPy({ bytes });
  const sum = pyodide.runPython("import hashlib; hashlib.sha256(bytes).hexdigest()", { globals: content });
  content.destroy();
  return sum;
}
