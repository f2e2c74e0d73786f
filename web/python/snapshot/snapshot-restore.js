/** The quick start: a runtime with the memory of a core that had already answered questions. */

import { TRIAL_QUESTION } from "../protocol.js";
import { handOver } from "../start/hand-over.js";
import { packURL, readPack } from "../start/pack.js";
import { openDoor, scripts, startPython } from "../start/runtime.js";
import { unpackPages } from "./snapshot-pages.js";

/** @import { Facts, Running } from "../core.d.ts" */

const NO_LIBRARY = packURL("no-library.zip");

/**
 * Start from a snapshot; rejects where its parts don't fit.
 * @param {{facts: Facts, code: Promise<WebAssembly.Module>, pages: Promise<ArrayBuffer>}} parts
 * @returns {Promise<Running>}
 */
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
