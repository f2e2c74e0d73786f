/** Print, as JSON, what lengths.ratios_to_pint gives inside Pyodide: node's engine is Chromium's. */
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [pyodideFolder, wheels, source, readings] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(pyodideFolder, "pyodide.mjs")).href);
const pyodide = await loadPyodide({ indexURL: pyodideFolder });
for (const name of await readdir(wheels)) {
  pyodide.unpackArchive(new Uint8Array(await readFile(join(wheels, name))), "wheel");
}
pyodide.FS.writeFile("lengths_bench.py", await readFile(source));
pyodide.globals.set("readings", Number(readings));
console.log(pyodide.runPython("import json, lengths_bench; json.dumps(lengths_bench.ratios_to_pint(readings))"));
