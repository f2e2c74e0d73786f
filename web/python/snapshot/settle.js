/** What a start did without, put in place when there is time: files that Python may yet ask for. */
import { readFile } from "../start/pack.js";
import { unpackWheels } from "../start/runtime.js";

/** @import { Started } from "../core.d.ts" */

const LIBRARY = "/lib/python314.zip";

/**
 * After this, every module of the standard library and every file of the wheels is there.
 * @param {Started} core
 */
export async function settle({ pyodide, pack, way }) {
  // The archive that the start had, and behind it all that makes it the whole library.
  const parts = await Promise.all([pack.library, pack.libraryRest].map(readFile));
  pyodide.FS.writeFile(LIBRARY, new Uint8Array(await new Blob(parts).arrayBuffer()));
  pyodide.runPython("import importlib; importlib.invalidate_caches()");
  if (way !== "snapshot") return;
  // A snapshot holds the memory alone, and chance as it stood when it was made.
  await unpackWheels(pyodide, pack);
  pyodide.runPython("import random; random.seed()");
}
