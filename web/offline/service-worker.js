/**
 * Answers from the version in use, all of it kept on the device, and makes ready the next one.
 *
 * A browser lets a new service worker take over as soon as no page is open. So that the person
 * decides, the version in use is kept on record: a new service worker goes on with the old files
 * until it is told to use its own.
 */
import { answerFrom, deleteAllBut, keeperOf, missingFrom } from "./keeper.js";
import { readVersionInUse, writeVersionInUse } from "./version-in-use.js";

/** @import { PrecacheController } from "workbox-precaching" */
/** @import { Report } from "./offline.d.ts" */

/** What the worker is: for TypeScript `self` is any kind of worker. */
const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));
const files = self.__WB_MANIFEST;
const newest = keeperOf(files, tellProgress);
/** @type {Promise<PrecacheController> | null} */
let used = null;

/** Return the keeper of the version in use. */
function inUse() {
  used ??= readVersionInUse().then((recorded) => (recorded ? keeperOf(recorded) : newest));
  return used;
}

async function useNewest() {
  await writeVersionInUse(files);
  used = Promise.resolve(newest);
  await deleteAllBut(newest);
}

async function tellProgress() {
  const total = newest.getCachedURLs().length;
  const keeping = { loaded: total - (await missingFrom(newest)).length, total };
  for (const page of await worker.clients.matchAll({ includeUncontrolled: true })) page.postMessage({ keeping });
}

/** @param {PrecacheController} keeper */
const keysOf = (keeper) => [...keeper.getURLsToCacheKeys().values()].join();

/** @returns {Promise<Report>} */
async function report() {
  const keeper = await inUse();
  const update = keysOf(keeper) !== keysOf(newest) && (await missingFrom(newest)).length === 0;
  return { missing: await missingFrom(keeper), total: keeper.getCachedURLs().length, update };
}

/**
 * The file that an address of this site names, be it asked for by the page or opened in a tab; "" for none.
 * @param {string} address
 * @param {PrecacheController} keeper
 */
function fileAt(address, keeper) {
  const asked = new URL(address);
  asked.search = "";
  asked.hash = "";
  const folder = new URL("./", self.location.href).href;
  const file = asked.href === folder ? new URL("index.html", folder).href : asked.href;
  return keeper.getCacheKeyForURL(file) ? file : "";
}

/** @param {FetchEvent} event */
async function answer(event) {
  const keeper = await inUse();
  const file = fileAt(event.request.url, keeper);
  return file ? answerFrom(keeper, file, event) : fetch(event.request);
}

worker.addEventListener("install", (event) => {
  worker.skipWaiting();
  const install = async () => {
    // One that came between and was not taken goes before the next is loaded: two are kept at most.
    await deleteAllBut(newest, await inUse());
    await newest.install(event);
  };
  event.waitUntil(install());
});

worker.addEventListener("activate", (event) => {
  const begin = async () => {
    if (!(await readVersionInUse())) await useNewest();
    await deleteAllBut(newest, await inUse());
    await worker.clients.claim();
  };
  event.waitUntil(begin());
});

worker.addEventListener("fetch", (event) => {
  const ours = event.request.method === "GET" && new URL(event.request.url).origin === self.location.origin;
  if (ours) event.respondWith(answer(event));
});

const tasks = { report, "use newest": useNewest };
worker.addEventListener("message", (event) => {
  const reply = tasks[event.data.ask]().then((said) => event.ports[0].postMessage(said));
  event.waitUntil(reply);
});
