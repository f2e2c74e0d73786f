/** Pyodide from our own folder, with nothing asked of any other place. */
import { packURL, readFile } from "./pack.js";

/** Pyodide's two scripts, asked for at once: every way of starting begins with them. */
export const scripts = Promise.all([import(packURL("pyodide.mjs")), import(packURL("pyodide.asm.mjs"))]);
scripts.catch(() => {}); // whoever waits for them hears of it

/** Start Python; `more` are further options of loadPyodide. */
export async function startPython(more) {
  const [{ loadPyodide }, { default: createPyodideModule }] = await scripts;
  return loadPyodide({ indexURL: packURL(""), packageBaseUrl: packURL("wheels/"), createPyodideModule, ...more });
}

/** Unpack the wheels where micropip would install them. */
export async function unpackWheels(pyodide, pack) {
  const archives = await Promise.all(pack.wheels.map(readFile));
  for (const archive of archives) pyodide.unpackArchive(archive, "wheel");
}

/** Return the core's one door: JSON text in, JSON text out. */
export const openDoor = (pyodide) => pyodide.pyimport("sawside").handle_json;
