/**
 * The slow start: the runtime, the library in use, and the core's wheel installed by micropip. It
 * has only what the first answer needs; the rest of it, and the wheels that the core asks for,
 * follow when a question waits for them.
 */

import { download } from "./download.js";
import { packURL } from "./pack.js";
import { progress } from "./progress.js";
import { openDoor, startPython, unpackRest } from "./runtime.js";

/** @import { Pack, Progress, Python, Running } from "../core.d.ts" */

const SCRIPT = "pyodide.asm.mjs";
const CODE = "pyodide.asm.wasm";

/**
 * @param {(now: Progress) => void} onProgress hears of every change
 * @returns {Promise<Running>}
 */
export async function slowStart(onProgress) {
  const { tell, listener } = progress(onProgress, "Getting ready");
  // The largest is on its way before the list of all says how large.
  const code = download(packURL(CODE), listener(CODE));
  const list = listener("pack.json");
  /** @type {Pack} */
  const pack = await download(packURL("pack.json"), { ...list, onBytes: () => list.onBytes(0) }).json();
  const streamed = [pack.library, pack.installer, pack.core];
  tell({ total: [SCRIPT, CODE, ...streamed].reduce((sum, name) => sum + pack.files[name].size, 0) });

  const [library, installer, core] = streamed.map((name) => download(packURL(name), listener(name)));
  const asked = { [CODE]: code, [pack.library]: library, [pack.installer]: installer };
  const pyodide = await handingOut(asked, async () => {
    const python = await startPython({ lockFileContents: pack.lock, stdLibURL: packURL(pack.library) });
    listener(SCRIPT).onBytes(pack.files[SCRIPT].size);
    tell({ step: "Almost ready" });
    await python.loadPackage("micropip", { messageCallback() {} });
    return python;
  });
  await install(pyodide, { [pack.core]: core });
  return { pyodide, pack, handle: openDoor(pyodide) };
}

/**
 * Fetch what the first answer did without, and put it in place.
 * @param {Running} core
 * @param {(now: Progress) => void} onProgress hears of every change
 */
export async function addRest({ pyodide, pack }, onProgress) {
  const { tell, listener } = progress(onProgress, "Loading the rest");
  const names = [pack.wheelsRest, ...pack.wheels];
  tell({ total: names.reduce((sum, name) => sum + pack.files[name].size, 0) });
  const begun = names.map((name) => [name, download(packURL(name), listener(name))]);
  const { [pack.wheelsRest]: rest, ...wheels } = Object.fromEntries(begun);
  const archive = await rest.arrayBuffer();
  // Where the network was away for long, there may be another version of the site by now.
  if (digest(pyodide, archive) !== pack.files[pack.wheelsRest].sha256)
    throw new Error("The rest is of another version.");
  await install(pyodide, wheels);
  unpackRest(pyodide, archive);
}

/**
 * Do `work` while Pyodide, which fetches one file after the other, gets those that are on their way.
 * @template Result
 * @param {Record<string, Response>} begun by the names of the pack
 * @param {() => Promise<Result>} work
 */
async function handingOut(begun, work) {
  const askNetwork = self.fetch;
  const files = new Map(Object.entries(begun).map(([name, file]) => [packURL(name), file]));
  self.fetch = async (url, options) => files.get(String(url)) ?? askNetwork(url, options);
  try {
    return await work();
  } finally {
    self.fetch = askNetwork;
  }
}

/**
 * @param {Python} pyodide
 * @param {Record<string, Response>} wheels
 */
async function install(pyodide, wheels) {
  const files = await Promise.all(
    Object.entries(wheels).map(async ([name, wheel]) => {
      const file = `/tmp/${name.split("/").at(-1)}`;
      pyodide.FS.writeFile(file, new Uint8Array(await wheel.arrayBuffer()));
      return file;
    }),
  );
  const micropip = pyodide.pyimport("micropip");
  const addresses = files.map((file) => `emfs:${file}`);
  await micropip.install.callKwargs(addresses, { deps: false });
  micropip.destroy();
  for (const file of files) pyodide.FS.unlink(file);
}

/** SHA-256 (hex) by Python: a page that has no HTTPS may not ask the browser for it. */
function digest(pyodide, bytes) {
  const content = pyodide.toPy({ bytes });
  const sum = pyodide.runPython("import hashlib; hashlib.sha256(bytes).hexdigest()", { globals: content });
  content.destroy();
  return sum;
}
