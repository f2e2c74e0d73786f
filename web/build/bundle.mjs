/**
 * Bundle the page, the worker, the service worker and the styles into one folder.
 * Use: node web/build/bundle.mjs WEB_FOLDER OUTPUT_FOLDER
 */
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { build } from "esbuild";

const [web, outdir] = process.argv.slice(2);
const runtime = await readFile(join(web, "node_modules/pyodide/pyodide.asm.wasm"));
const RUNTIME_CODE = JSON.stringify(createHash("sha256").update(runtime).digest("hex"));

const common = {
  absWorkingDir: web,
  bundle: true,
  minify: true,
  legalComments: "none",
  target: "es2022",
  logLevel: "warning",
  outdir,
  define: { RUNTIME_CODE },
};

// What both scripts of the page use is in one file, and there once.
const pages = { begin: "./begin.js", main: "./main.js" };
const others = { worker: "./python/worker.js", styles: "./styles/index.css" };
const offline = { "service-worker": "./offline/service-worker.js" };
try {
  await build({ ...common, format: "esm", entryPoints: pages, splitting: true, chunkNames: "shared" });
  await build({ ...common, format: "esm", entryPoints: others });
  // A classic script: module service workers are newer than some browsers that run the core.
  await build({ ...common, format: "iife", entryPoints: offline });
} catch {
  process.exit(1); // esbuild has said what is wrong, and where
}
