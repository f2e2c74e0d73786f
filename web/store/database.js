import { opener } from "./opener.js";

/**
 * With opener.js the one place that knows IndexedDB. Three stores: `page` (key → what the screen last showed),
 * `projects` (a record each, with its history) and `photos` (key → a picture as a data address).
 * A promise here resolves only when its transaction is complete and, for projects and photos, on
 * the disk.
 * @param {{onBlocked(): void}} options called while another tab holds an older store open
 */
export async function openDatabase({ onBlocked }) {
  const database = opener(onBlocked);
  await database();
  return {
    async page() {
      const transaction = (await database()).transaction("page");
      const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()]);
      return Object.fromEntries(keys.map((key, at) => [key, values[at]]));
    },
    pageOf: async (key) => (await database()).get("page", key),
    keepPage: async (key, value) => (await database()).put("page", value, key),
    /** The same, but resolves only when it is on the disk. */
    async keepPageSurely(key, value) {
      const transaction = (await database()).transaction("page", "readwrite", { durability: "strict" });
      transaction.store.put(value, key);
      await transaction.done;
    },
    project: async (id) => (await database()).get("projects", id),
    projects: async () => (await database()).getAll("projects"),
    /** The project is gone when this resolves, and every photo that no project is left to show. */
    async dropProject(id) {
      const transaction = (await database()).transaction(["projects", "photos"], "readwrite", { durability: "strict" });
      const [projects, photos] = ["projects", "photos"].map((name) => transaction.objectStore(name));
      await projects.delete(id);
      const [left, keys] = await Promise.all([projects.getAll(), photos.getAllKeys()]);
      const texts = JSON.stringify(left);
      for (const key of keys) if (!texts.includes(JSON.stringify(key))) photos.delete(key);
      await transaction.done;
    },
    photo: async (key) => (await database()).get("photos", key),
    async keepPhoto(key, address) {
      const transaction = (await database()).transaction("photos", "readwrite", { durability: "strict" });
      transaction.store.put(address, key);
      await transaction.done;
    },

    /**
     * Write `record` if nobody wrote a later one meanwhile; what the system has cleared is written again.
     * @returns the record kept, or null when another tab was first
     */
    async keepProject(record) {
      const transaction = (await database()).transaction("projects", "readwrite", { durability: "strict" });
      const there = await transaction.store.get(record.id);
      if (there && there.revision !== record.revision) {
        await transaction.done;
        return null;
      }
      const kept = { ...record, revision: record.revision + 1 };
      await transaction.store.put(kept);
      await transaction.done;
      return kept;
    },
  };
}

/** Stands in when the browser refuses its store: all works, nothing outlives the page. */
export function memoryDatabase() {
  const projects = new Map();
  const photos = new Map();
  const pages = new Map();
  return {
    page: async () => ({}),
    pageOf: async (key) => pages.get(key),
    keepPage: async () => {},
    keepPageSurely: async (key, value) => {
      pages.set(key, value);
    },
    project: async (id) => projects.get(id),
    projects: async () => [...projects.values()],
    dropProject: async (id) => {
      projects.delete(id);
    },
    photo: async (key) => photos.get(key),
    keepPhoto: async (key, address) => {
      photos.set(key, address);
    },
    keepProject: async (record) => {
      const kept = { ...record, revision: record.revision + 1 };
      projects.set(kept.id, kept);
      return kept;
    },
  };
}
