import { loadPyodide } from "./pyodide.mjs";

const { installer, wheels } = await (await fetch("wheels.json")).json();
const here = (name) => new URL(name, location).href;
const pyodide = await loadPyodide();
const options = { messageCallback() {}, checkIntegrity: false };
await pyodide.loadPackage(here(installer), options);
const micropip = pyodide.pyimport("micropip");
await micropip.install.callKwargs(wheels.map(here), { deps: false });
postMessage(
  pyodide.runPython(`
import pint

units = pint.UnitRegistry()
str((27 / 16 * units.inch + 3 / 4 * units.inch).to("mm"))
`),
);
