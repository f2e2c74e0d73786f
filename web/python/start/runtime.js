/** Pyodide from our own folder, with nothing asked of any other place. */
import { packURL, readFile } from "./pack.js";

/** @import { Door, Options, Pack, Python } from "../core.d.ts" */

const SITE = "/lib/python3.14/site-packages";

/** Pyodide's two scripts, asked for at once: every way of starting begins with them. */
export const scripts = Promise.all([import(packURL("pyodide.mjs")), import(packURL("pyodide.asm.mjs"))]);
scripts.catch(() => {}); // whoever waits for them hears of it

/**
 * Start Python.
 * @param {Options} more of loadPyodide
 * @returns {Promise<Python>}
 */
export async function startPython(more) {
  const [{ loadPyodide }, { default: createPyodideModule }] = await scripts;
  return loadPyodide({ indexURL: packURL(""), packageBaseUrl: packURL("wheels/"), createPyodideModule, ...more });
}

/**
 * Unpack all of the wheels where the slow start installs them.
 * @param {Python} pyodide
 * @param {Pack} pack
 */
export async function unpackWheels(pyodide, pack) {
  const wheels = [pack.installer, pack.core, ...pack.wheels];
  const [rest, ...archives] = await Promise.all([pack.wheelsRest, ...wheels].map(readFile));
  for (const archive of archives) pyodide.unpackArchive(archive, "wheel", { extractDir: SITE });
  unpackRest(pyodide, rest);
}

/**
 * Put beside the files of the installed wheels those that the first answer did without.
 * @param {Python} pyodide
 * @param {ArrayBuffer} archive
 */
export function unpackRest(pyodide, archive) {
  pyodide.unpackArchive(archive, "zip", { extractDir: SITE });
  pyodide.runPython("import importlib; importlib.invalidate_caches()");
}

/**
 * Return the core's one door.
 * @param {Python} pyodide
 * @returns {Door}
 */
export const openDoor = (pyodide) => pyodide.pyimport("sawside").handle_json;
