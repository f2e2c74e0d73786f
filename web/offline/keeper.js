/** Keeps the files of a version in the precache: loads each once, and says how far it has come. */
import { PrecacheController } from "workbox-precaching";
import { POLICY } from "./policy.js";

/** @import { KeptFile } from "./offline.d.ts" */

const CONFINED = /\.(html|js)$/;

const plugin = {
  // Ask whether what the browser has just loaded is still the newest, and load only what is not.
  requestWillFetch: async ({ request }) => new Request(request, { cache: "no-cache" }),

  async cacheWillUpdate({ request, response }) {
    if (!response.ok) return null;
    if (!CONFINED.test(new URL(request.url).pathname)) return response;
    const headers = new Headers(response.headers);
    headers.set("Content-Security-Policy", POLICY);
    return new Response(response.body, { headers });
  },
};

/**
 * Return a controller for files.
 * @param {KeptFile[]} files
 * @param {() => void} [onKept] called for every file that comes into the cache
 */
export function keeperOf(files, onKept = () => {}) {
  const keeper = new PrecacheController({ plugins: [plugin, { cacheDidUpdate: async () => onKept() }] });
  keeper.addToCacheList(files);
  return keeper;
}

/**
 * Answer a request for the file at `url` from the cache; one that has gone missing is loaded again.
 * @param {PrecacheController} keeper
 * @param {string} url
 * @param {FetchEvent} event
 */
export function answerFrom(keeper, url, event) {
  const cacheKey = keeper.getCacheKeyForURL(url);
  const integrity = cacheKey && keeper.getIntegrityForCacheKey(cacheKey);
  return keeper.strategy.handle({ request: new Request(url), event, params: { cacheKey, integrity } });
}

/**
 * Return the addresses of those files that are not in the cache.
 * @param {PrecacheController} keeper
 */
export async function missingFrom(keeper) {
  const cache = await caches.open(keeper.strategy.cacheName);
  /** @type {Set<string | undefined>} */
  const kept = new Set((await cache.keys()).map(({ url }) => url));
  return keeper.getCachedURLs().filter((url) => !kept.has(keeper.getCacheKeyForURL(url)));
}

/**
 * Delete from the cache what belongs to none of some keepers.
 * @param {PrecacheController[]} keepers
 */
export async function deleteAllBut(...keepers) {
  const wanted = new Set(keepers.flatMap((keeper) => [...keeper.getURLsToCacheKeys().values()]));
  const cache = await caches.open(keepers[0].strategy.cacheName);
  const kept = await cache.keys();
  await Promise.all(kept.filter(({ url }) => !wanted.has(url)).map((each) => cache.delete(each)));
}
