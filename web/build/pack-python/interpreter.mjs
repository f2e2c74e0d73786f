/** A Pyodide in node, and the steps that the browser's slow start takes in it. */
import { pathToFileURL } from "node:url";

/** Start the Pyodide in `pyodideFolder` with the standard library in the archive at `stdLibURL`. */
export async function boot({ pyodideFolder, info, stdLibURL }) {
  const { loadPyodide } = await import(pathToFileURL(`${pyodideFolder}/pyodide.mjs`).href);
  return loadPyodide({
    indexURL: pyodideFolder,
    lockFileContents: { info, packages: {} },
    packageBaseUrl: pyodideFolder,
    // Sets are written into bytecode in the order of their hashes.
    env: { PYTHONHASHSEED: "0" },
    stdLibURL,
  });
}

/** Install the wheels with micropip, run warm.py; return the files of the library that this needed. */
export async function useAsTheBrowserDoes(pyodide, wheels, warm) {
  const micropip = wheels.find(({ name }) => name.startsWith("micropip-"));
  pyodide.unpackArchive(micropip.bytes, "wheel");
  const installer = pyodide.pyimport("micropip");
  for (const { name, bytes } of wheels) {
    if (name === micropip.name) continue;
    pyodide.FS.writeFile(`/tmp/${name}`, bytes);
    await installer.install.callKwargs(`emfs:/tmp/${name}`, { deps: false });
  }
  pyodide.runPython(warm);
  return pyodide
    .runPython(`
import sys, pyodide.http, pyodide.webloop, random, zipfile, shutil, importlib.metadata
sorted(
    module.__spec__.origin.removeprefix("/lib/python314.zip/")
    for module in list(sys.modules.values())
    if getattr(module, "__spec__", None) and (module.__spec__.origin or "").startswith("/lib/python314.zip/")
)
`)
    .toJs();
}
