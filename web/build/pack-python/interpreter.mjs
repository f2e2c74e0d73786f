/** A Pyodide in node, and the steps that the browser's slow start takes in it. */
import { pathToFileURL } from "node:url";

const SITE = "/lib/python3.14/site-packages";
const DESCRIBE = JSON.stringify({ do: "describe" });

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

/**
 * Take the steps of a slow start: install the core with micropip and ask the first question, then install the other
 * `wheels`, add `rest`, if that is in a file of its own, and run warm.py and exercise.py. Return {answer, description, opened,
 * library, modules}: the answer, what describes the questions, the files of the wheels that were read until the answer,
 * the files of the library that all of it needed, and the modules that are there in the end.
 */
export async function useAsTheBrowserDoes(pyodide, { wheels, rest, question, used, warm, exercise }) {
  const noted = pyodide.toPy({});
  pyodide.runPython(used, { globals: noted });
  const told = (name) => noted.get(name)().toJs();
  const wheelOf = (project) => wheels.find(({ name }) => name.startsWith(`${project}-`));
  const [installer, core] = ["micropip", "sawside"].map(wheelOf);
  pyodide.unpackArchive(installer.bytes, "wheel", { extractDir: SITE });
  const micropip = pyodide.pyimport("micropip");
  const install = async ({ name, bytes }) => {
    pyodide.FS.writeFile(`/tmp/${name}`, bytes);
    await micropip.install.callKwargs(`emfs:/tmp/${name}`, { deps: false });
  };
  await install(core);
  const answer = pyodide.pyimport("sawside").handle_json(question);
  const opened = told("files_read");
  for (const each of wheels) if (each !== installer && each !== core) await install(each);
  if (rest) pyodide.unpackArchive(rest, "zip", { extractDir: SITE });
  pyodide.runPython(warm);
  pyodide.runPython(exercise);
  pyodide.runPython("import pyodide.http, pyodide.webloop, random, zipfile, shutil, importlib.metadata");
  const description = pyodide.pyimport("sawside").handle_json(DESCRIBE);
  return { answer, description, opened, library: told("library_files"), modules: told("modules") };
}
