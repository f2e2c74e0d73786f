/** The slow start: the runtime, the library in use, and the wheels installed by micropip. */
import { download } from "./download.js";
import { packURL } from "./pack.js";
import { openDoor, startPython } from "./runtime.js";

const SCRIPT = "pyodide.asm.mjs";

/** Return {pyodide, pack, handle}; `onProgress({step, loaded, total})` hears of every change. */
export async function slowStart(onProgress) {
  const now = { step: "Waking the arithmetic", loaded: 0, total: 0 };
  const tell = (change) => onProgress(Object.assign(now, change));
  const lost = new Set();
  const loading = () => (lost.size ? "The network is gone. Loading goes on when it is back" : "Loading the arithmetic");
  const listener = (name) => ({
    onBytes(count) {
      lost.delete(name);
      tell({ step: loading(), loaded: now.loaded + count });
    },
    onLost() {
      lost.add(name);
      tell({ step: loading() });
    },
  });
  const pack = await download(packURL("pack.json"), { ...listener("pack.json"), onBytes() {} }).json();
  lost.clear();
  const installer = `wheels/${pack.lock.packages.micropip.file_name}`;
  const streamed = ["pyodide.asm.wasm", pack.library, ...pack.wheels, installer];
  now.total = [SCRIPT, ...streamed].reduce((sum, name) => sum + pack.files[name].size, 0);

  const askNetwork = self.fetch;
  const begun = new Map(streamed.map((name) => [packURL(name), download(packURL(name), listener(name))]));
  // Pyodide and micropip fetch one after the other; all has been on its way since the line above.
  self.fetch = async (url, options) => begun.get(String(url)) ?? askNetwork(url, options);
  try {
    const pyodide = await startPython({ lockFileContents: pack.lock, stdLibURL: packURL(pack.library) });
    listener(SCRIPT).onBytes(pack.files[SCRIPT].size);
    tell({ step: "Setting up the arithmetic" });
    await pyodide.loadPackage("micropip", { messageCallback() {} });
    const micropip = pyodide.pyimport("micropip");
    await micropip.install.callKwargs(pack.wheels.map(packURL), { deps: false });
    micropip.destroy();
    return { pyodide, pack, handle: openDoor(pyodide) };
  } finally {
    self.fetch = askNetwork;
  }
}
