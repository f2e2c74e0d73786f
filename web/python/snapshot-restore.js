/** The quick start: a runtime with the memory of a core that had already answered questions. */
import { compileAhead } from "./compile-ahead.js";
import { packURL, readPack } from "./pack.js";
import { TRIAL_QUESTION } from "./protocol.js";
import { openDoor, scripts, startPython } from "./runtime.js";
import { unpackPages } from "./snapshot-pages.js";

const CODE = packURL("pyodide.asm.wasm");
const NO_LIBRARY = packURL("empty.zip");
const NO_PACKAGES = (lock) => ({ info: lock.info, packages: {} });

/** Return {pyodide, pack, handle} from what findSnapshot found; rejects when it is not sound. */
export async function restoreSnapshot({ facts, pages, sound }) {
  compileAhead(keptCode(facts.code), { codeURL: CODE, libraryURL: NO_LIBRARY });
  const [pack, [, { default: createPyodideModule }]] = await Promise.all([readPack(), scripts]);
  if (facts.build !== pack.build) throw new Error("The snapshot is of another version.");
  const pyodide = await startPython({
    lockFileContents: NO_PACKAGES(pack.lock),
    stdLibURL: NO_LIBRARY,
    _loadSnapshot: Uint8Array.from(facts.header),
    // With the header alone Pyodide copies no memory: that is done here, once it has been read.
    createPyodideModule: async (settings) => {
      const module = await createPyodideModule(settings);
      unpackPages(module, await pages, facts.size);
      return module;
    },
  });
  pyodide.runPython("import random; random.seed()");
  const handle = openDoor(pyodide);
  // Nothing is answered from a memory that is not the one that was kept.
  await sound;
  if (handle(TRIAL_QUESTION) !== facts.trial) throw new Error("The restored core answers otherwise.");
  return { pyodide, pack, handle };
}

/** The runtime's code from where the service worker keeps it, without the way through it. */
async function keptCode(sha256) {
  return (await caches.match(`${CODE}?__WB_REVISION__=${sha256.slice(0, 16)}`)) ?? fetch(CODE);
}
