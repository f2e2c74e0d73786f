/**
 * What a quick start needs first, begun in the page: its thread has nothing to do yet, while the
 * worker's is busy with the runtime's scripts, and memory and compiled code can be handed over.
 */
import { packURL } from "../start/pack.js";
import { findSnapshot } from "./snapshot-store.js";

const CODE = packURL("pyodide.asm.wasm");
const KEPT = `${CODE}?__WB_REVISION__=${RUNTIME_CODE.slice(0, 16)}`;

/** Return what findSnapshot finds, and `code`, a promise of the compiled runtime; or null. */
export async function snapshotAhead() {
  const begun = keptCode().catch(() => null);
  const found = await findSnapshot();
  if (found?.facts.code !== RUNTIME_CODE) return null;
  const code = (await begun)?.compiled ?? WebAssembly.compileStreaming(fetch(CODE));
  return { ...found, code };
}

/** The runtime's code from where the service worker keeps it, without the way through it; null where it does not. */
async function keptCode() {
  const response = await caches.match(KEPT);
  if (!response) return null;
  const compiled = WebAssembly.compileStreaming(response);
  compiled.catch(() => {}); // whoever waits for it hears of it
  // Not the promise itself: whether there is one is known long before it is compiled.
  return { compiled };
}
