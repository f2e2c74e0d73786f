/** Print, as JSON, what a call of a Python file gives inside Pyodide: node's engine is Chromium's. */
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [pyodideFolder, wheels, source, call] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(pyodideFolder, "pyodide.mjs")).href);
const pyodide = await loadPyodide({ indexURL: pyodideFolder });
const site = pyodide.runPython("import site; site.getsitepackages()[0]");
const unpack = async (path, format) =>
  pyodide.unpackArchive(new Uint8Array(await readFile(path)), format, { extractDir: site });
for (const name of await readdir(wheels)) await unpack(join(wheels, name), "wheel");
await unpack(join(wheels, "../wheels-rest.zip"), "zip");
pyodide.runPython("import importlib; importlib.invalidate_caches()");
pyodide.FS.writeFile("measured.py", await readFile(source));
try {
  console.log(pyodide.runPython(`import json, measured; json.dumps(measured.${call})`));
} catch (error) {
  // The traceback of Python alone: node would print the whole of Pyodide before it.
  console.error(error.message);
  process.exitCode = 1;
}
