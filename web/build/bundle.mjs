/**
 * Bundle the page, the worker, the service worker and the styles into one folder.
 * Use: node web/build/bundle.mjs WEB_FOLDER OUTPUT_FOLDER
 */
import { build } from "esbuild";

const [web, outdir] = process.argv.slice(2);

const common = {
  absWorkingDir: web,
  bundle: true,
  minify: true,
  legalComments: "none",
  target: "es2022",
  logLevel: "warning",
  outdir,
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
