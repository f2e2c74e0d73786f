/**
 * Make everything under python/ of the site: the runtime as it is, the standard library and the
 * wheels compiled, each in what a first visit needs and the rest, and pack.json, which lists them.
 * Use: node web/build/pack-python.mjs --pyodide FOLDER --wheels FOLDER --out FOLDER
 *
 * Pyodide itself compiles, run in node: the bytecode is then that of the Python that reads it.
 */
import { createHash } from "node:crypto";
import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { isDeepStrictEqual, parseArgs } from "node:util";
import { FIRST_QUESTION } from "../python/protocol.js";
import { boot, useAsTheBrowserDoes } from "./pack-python/interpreter.mjs";

const WHEELS_REST = "wheels-rest.zip";
const RUNTIME = ["pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm"];
const helper = (name) => new URL(`./pack-python/${name}`, import.meta.url);

const options = Object.fromEntries(["pyodide", "wheels", "out"].map((name) => [name, { type: "string" }]));
const folders = parseArgs({ options }).values;
const pyodideFolder = resolve(folders.pyodide);
const out = resolve(folders.out);

const wheels = [];
for (const name of (await readdir(folders.wheels)).filter((each) => each.endsWith(".whl")).sort()) {
  wheels.push({ name, bytes: new Uint8Array(await readFile(join(folders.wheels, name))) });
}
const [used, warm, exercise] = await Promise.all(
  ["used.py", "warm.py", "exercise.py"].map((name) => readFile(helper(name), "utf8")),
);
const steps = { question: FIRST_QUESTION, used, warm, exercise };
const stdLibURL = join(pyodideFolder, "python_stdlib.zip");
const { info } = JSON.parse(await readFile(join(pyodideFolder, "pyodide-lock.json"), "utf8"));

const measured = await boot({ pyodideFolder, info, stdLibURL });
const whole = await useAsTheBrowserDoes(measured, { wheels, ...steps });
if (!JSON.parse(whole.answer).ok) throw new Error(`The first question is answered by ${whole.answer}`);

const compiler = await boot({ pyodideFolder, info, stdLibURL });
compiler.FS.writeFile("/stdlib.zip", new Uint8Array(await readFile(stdLibURL)));
for (const { name, bytes } of wheels) compiler.FS.writeFile(`/${name}`, bytes);
compiler.runPython(await readFile(helper("bytecode.py"), "utf8"));
const compile = compiler.runPython("compile_all")(compiler.toPy(whole.library), compiler.toPy(whole.opened));
const compiled = compile.toJs({ dict_converter: Object.fromEntries });

// Both depend on nothing that a person typed: the page has them before Python.
const asked = { "describe.json": whole.description, "first-answer.json": whole.answer };
const texts = Object.entries({ "warm.py": warm, ...asked }).map(([name, text]) => [name, Buffer.from(text)]);
const files = { ...Object.fromEntries(texts), ...compiled };
for (const name of RUNTIME) files[name] = await readFile(join(pyodideFolder, name));
await mkdir(join(out, "wheels"), { recursive: true });
for (const [name, bytes] of Object.entries(files)) await writeFile(join(out, name), bytes);

// The packed library must do all that the whole one did, or the build fails here.
const packed = Object.keys(compiled).filter((name) => name.endsWith(".whl"));
const trial = await boot({ pyodideFolder, info, stdLibURL: join(out, "library.zip") });
const first = packed.map((path) => ({ name: path.replace("wheels/", ""), bytes: compiled[path] }));
const again = await useAsTheBrowserDoes(trial, { wheels: first, rest: compiled[WHEELS_REST], ...steps });
for (const what of ["answer", "description", "modules"]) {
  if (!isDeepStrictEqual(again[what], whole[what])) throw new Error(`What is packed has another ${what}.`);
}

const sha256 = (bytes) => createHash("sha256").update(bytes).digest("hex");
const listed = {};
for (const name of Object.keys(files).sort()) listed[name] = { size: files[name].length, sha256: sha256(files[name]) };
const wheelOf = (project) => packed.find((name) => name.startsWith(`wheels/${project}-`));
const [micropip, core] = ["micropip", "sawside"].map(wheelOf);
const installer = { name: "micropip", version: micropip.split("-")[1], file_name: micropip.replace("wheels/", "") };
const lock = {
  info,
  packages: {
    micropip: {
      ...installer,
      install_dir: "site",
      package_type: "package",
      sha256: listed[micropip].sha256,
      imports: ["micropip"],
      depends: [],
      unvendored_tests: false,
    },
  },
};
const pack = {
  build: sha256(JSON.stringify(listed)),
  library: "library.zip",
  libraryRest: "library-rest.bin",
  core,
  wheels: packed.filter((name) => name !== micropip && name !== core),
  installer: micropip,
  wheelsRest: WHEELS_REST,
  lock,
  files: listed,
};
await writeFile(join(out, "pack.json"), `${JSON.stringify(pack, null, 1)}\n`);
process.exit(0); // an idle interpreter keeps node alive
