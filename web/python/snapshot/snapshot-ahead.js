/**
 * What a quick start needs first, begun in the page: its thread has nothing to do yet, while the
 * worker's is busy with the runtime's scripts, and memory and compiled code can be handed over.
 */
import { packURL } from "../start/pack.js";
import { findSnapshot } from "./snapshot-store.js";

const CODE = packURL("pyodide.asm.wasm");

/** Return what findSnapshot finds, and `code`, a promise of the compiled runtime; or null. */
export async function snapshotAhead() {
  const found = await findSnapshot();
  return found && { ...found, code: WebAssembly.compileStreaming(keptCode(found.facts.code)) };
}

/** The runtime's code from where the service worker keeps it, without the way through it. */
async function keptCode(sha256) {
  return (await caches.match(`${CODE}?__WB_REVISION__=${sha256.slice(0, 16)}`)) ?? fetch(CODE);
}
