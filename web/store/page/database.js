import { opener } from "./opener.js";

/** @import { IDBPObjectStore, IDBPTransaction } from "idb" */
/** @import { Along, Database, PageChanges, ProjectRecord } from "../shapes.d.ts" */

/** @typedef {IDBPTransaction<any, any, "readwrite">} Writing the stores hold values of any kind */

/**
 * With opener.js the one place that knows IndexedDB. Three stores: `page` (key → what the screen last showed),
 * `projects` (a record each, with its history) and `photos` (key → a picture as a data address).
 * A promise here resolves only when its transaction is complete and, but for `keepPage`, on the disk.
 * @param {{onBlocked(): void, onErased(): void}} options see opener.js
 * @returns {Promise<Database>}
 */
export async function openDatabase(options) {
  const database = opener(options);
  await database();
  const writing = async (names) => (await database()).transaction(names, "readwrite", { durability: "strict" });

  return {
    async page() {
      const transaction = (await database()).transaction("page");
      const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()]);
      return Object.fromEntries(keys.map((key, at) => [key, values[at]]));
    },
    pageOf: async (key) => (await database()).get("page", key),
    keepPage: async (key, value) => (await database()).put("page", value, key),
    /** Several keys of the page at once: `changes` has for each what makes the new value of the one kept. */
    async changePage(changes) {
      const transaction = await writing(["page"]);
      await allOrNone(transaction, () => change(transaction.store, changes));
    },
    project: async (id) => (await database()).get("projects", id),
    projects: async () => (await database()).getAll("projects"),
    /** The project is gone when this resolves, and every photo that no project is left to show. */
    dropProject: async (id) => dropIn(await writing(["projects", "photos"]), id),
    photo: async (key) => (await database()).get("photos", key),
    /**
     * Write `record` if nobody wrote a later one meanwhile; what the system has cleared is written again. What hangs
     * on it is written with it or not at all: `pictures` {key: address} that it shows, but for those that are there, and
     * `changes` of the page.
     * @returns the record kept, or null when another tab was first
     */
    keepProject: async (record, along) => keepIn(await writing(["projects", "photos", "page"]), record, along),
  };
}

/**
 * @param {Writing} transaction
 * @param {string} id
 */
async function dropIn(transaction, id) {
  const [projects, photos] = ["projects", "photos"].map((name) => transaction.objectStore(name));
  await projects.delete(id);
  const [left, keys] = await Promise.all([projects.getAll(), photos.getAllKeys()]);
  const texts = JSON.stringify(left);
  for (const key of keys) if (!texts.includes(JSON.stringify(key))) photos.delete(key);
  await transaction.done;
}

/**
 * @param {Writing} transaction
 * @param {ProjectRecord} record
 * @param {Along} [along]
 * @returns {Promise<ProjectRecord | null>}
 */
async function keepIn(transaction, record, { pictures = {}, changes = {} } = {}) {
  const [projects, photos, page] = ["projects", "photos", "page"].map((name) => transaction.objectStore(name));
  const there = await projects.get(record.id);
  if (there && there.revision !== record.revision) {
    await transaction.done;
    return null;
  }
  const kept = { ...record, revision: record.revision + 1 };
  await allOrNone(transaction, async () => {
    for (const [key, address] of Object.entries(pictures)) {
      if (!(await photos.getKey(key))) await photos.put(address, key);
    }
    await projects.put(kept);
    await change(page, changes);
  });
  return kept;
}

/**
 * @param {IDBPObjectStore<any, any, any, "readwrite">} page
 * @param {PageChanges} changes
 */
async function change(page, changes) {
  for (const [key, changed] of Object.entries(changes)) if (changed) await page.put(changed(await page.get(key)), key);
}

/**
 * Ends the transaction with the first write that is refused: what others wrote in it is undone.
 * @param {Writing} transaction
 * @param {() => Promise<void>} write
 */
async function allOrNone(transaction, write) {
  try {
    await write();
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // The browser has ended it already.
    }
    await transaction.done.catch(() => {});
    throw error;
  }
  await transaction.done;
}
