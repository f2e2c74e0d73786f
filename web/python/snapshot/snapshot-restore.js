/** The quick start: a runtime with the memory of a core that had already answered questions. */

import { TRIAL_QUESTION } from "../protocol.js";
import { handOver } from "../start/hand-over.js";
import { packURL, readPack } from "../start/pack.js";
import { openDoor, scripts, startPython } from "../start/runtime.js";
import { unpackPages } from "./snapshot-pages.js";

const NO_LIBRARY = packURL("no-library.zip");

/** Return {pyodide, pack, handle}; `code` and `pages` are promises. Rejects when they don't fit. */
export async function restoreSnapshot({ facts, code, pages }) {
  handOver(code, { codeURL: packURL("pyodide.asm.wasm"), libraryURL: NO_LIBRARY });
  const [pack, [, { default: createPyodideModule }]] = await Promise.all([readPack(), scripts]);
  if (facts.build !== pack.build) throw new Error("The snapshot is of another version.");
  const pyodide = await startPython({
    lockFileContents: { info: pack.lock.info, packages: {} },
    stdLibURL: NO_LIBRARY,
    _loadSnapshot: Uint8Array.from(facts.header),
    // With the header alone Pyodide copies no memory: that is done here, once it has been read.
    createPyodideModule: async (settings) => {
      const module = await createPyodideModule(settings);
      unpackPages(module, await pages, facts.size);
      return module;
    },
  });
  const handle = openDoor(pyodide);
  if (handle(TRIAL_QUESTION) !== facts.trial) throw new Error("The restored core answers otherwise.");
  return { pyodide, pack, handle };
}
