/** Where the snapshot is kept: one response in a cache, which is there whole or not at all. */

/** @import { Facts } from "../core.d.ts" */

const CACHE = "python-snapshot";
const ADDRESS = new URL("python/snapshot", import.meta.url).href;
const FACTS = "X-Snapshot";
const FORMAT = 1;

/** Whether this browser lets a snapshot be kept. */
export const canKeepSnapshot = async () => {
  try {
    return Boolean(await caches.open(CACHE));
  } catch {
    return false;
  }
};

/**
 * Keep the packed pages.
 * @param {ArrayBuffer} pages
 * @param {Facts} facts
 */
export async function keepSnapshot(pages, facts) {
  const about = { ...facts, format: FORMAT, length: pages.byteLength, sha256: await sha256(pages) };
  const headers = { [FACTS]: encodeURIComponent(JSON.stringify(about)) };
  const cache = await caches.open(CACHE);
  await cache.put(ADDRESS, new Response(pages, { headers }));
}

/**
 * Return {facts, pages, sound} of the kept snapshot: `pages` is a promise of what is stored, and
 * `sound` one that fails when that is not what was kept. Null when there is no snapshot, or none
 * that this version can read.
 */
export async function findSnapshot() {
  const cache = await caches.open(CACHE);
  const response = await cache.match(ADDRESS);
  if (!response) return null;
  const facts = readFacts(response);
  if (!facts) return null;
  const pages = response.arrayBuffer();
  const sound = pages.then((bytes) => compare(bytes, facts));
  sound.catch(() => {}); // whoever waits for it hears of it
  return { facts, pages, sound };
}

/** Forget the kept snapshot, if any. */
export async function dropSnapshot() {
  await caches.delete(CACHE);
}

/**
 * @param {Response} response
 * @returns {Facts | null}
 */
function readFacts(response) {
  try {
    const facts = JSON.parse(decodeURIComponent(response.headers.get(FACTS) ?? ""));
    return facts.format === FORMAT ? facts : null;
  } catch {
    return null;
  }
}

/**
 * @param {ArrayBuffer} pages
 * @param {Facts} facts
 */
async function compare(pages, facts) {
  if (pages.byteLength !== facts.length) throw new Error("The snapshot is cut short.");
  if ((await sha256(pages)) !== facts.sha256) throw new Error("The snapshot is damaged.");
}

/** @param {ArrayBuffer} bytes */
async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (each) => each.toString(16).padStart(2, "0")).join("");
}
