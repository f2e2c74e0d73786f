import { openDB } from "idb";

/**
 * The one place that knows IndexedDB. Two stores: `page` (key → what the screen last showed) and
 * `projects` (a record each, with its history). A promise here resolves only when its transaction
 * is complete and, for projects, on the disk.
 */
export async function openDatabase() {
  const database = await openDB("sawside", 1, {
    upgrade(fresh) {
      fresh.createObjectStore("page");
      fresh.createObjectStore("projects", { keyPath: "id" });
    },
    // Another tab wants a newer version: let go, so that it isn't blocked.
    blocking: (_current, _wanted, event) => event.target.close(),
  });
  return {
    async page() {
      const transaction = database.transaction("page");
      const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()]);
      return Object.fromEntries(keys.map((key, at) => [key, values[at]]));
    },
    keepPage: (key, value) => database.put("page", value, key),
    /** The same, but resolves only when it is on the disk. */
    async keepPageSurely(key, value) {
      const transaction = database.transaction("page", "readwrite", { durability: "strict" });
      transaction.store.put(value, key);
      await transaction.done;
    },
    project: (id) => database.get("projects", id),
    projects: () => database.getAll("projects"),

    /**
     * Write `record` if nobody wrote a later one meanwhile.
     * @returns the record kept, or null when another tab was first
     */
    async keepProject(record) {
      const transaction = database.transaction("projects", "readwrite", { durability: "strict" });
      const there = await transaction.store.get(record.id);
      if ((there?.revision ?? 0) !== record.revision) {
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
  return {
    page: async () => ({}),
    keepPage: async () => {},
    keepPageSurely: async () => {},
    project: async (id) => projects.get(id),
    projects: async () => [...projects.values()],
    keepProject: async (record) => {
      const kept = { ...record, revision: record.revision + 1 };
      projects.set(kept.id, kept);
      return kept;
    },
  };
}
