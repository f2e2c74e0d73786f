/** What a start did without, put in place when there is time: files that Python may yet ask for. */
import { readFile } from "./pack.js";
import { unpackWheels } from "./runtime.js";

const REST = "/lib/python314-rest.zip";

/** After this, every module of the standard library and every file of the wheels is there. */
export async function settle({ pyodide, pack, way }) {
  const write = async (path, name) => pyodide.FS.writeFile(path, new Uint8Array(await readFile(name)));
  // A snapshot holds the memory alone, and Python still knows this archive's table of contents.
  if (way === "snapshot") await write("/lib/python314.zip", pack.library);
  if (way === "snapshot") await unpackWheels(pyodide, pack);
  await write(REST, pack.rest);
  pyodide.runPython(`import importlib, sys; sys.path.append("${REST}"); importlib.invalidate_caches()`);
}
