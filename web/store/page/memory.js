/** @import { Database, PageChanges, ProjectRecord } from "../shapes.d.ts" */

/**
 * Stands in when the browser refuses its store: all works, nothing outlives the page.
 * @returns {Database}
 */
export function memoryDatabase() {
  /** @type {Map<string, ProjectRecord>} */
  const projects = new Map();
  const photos = new Map();
  const pages = new Map();

  /** @param {PageChanges} changes */
  function changePage(changes) {
    for (const [key, changed] of Object.entries(changes)) if (changed) pages.set(key, changed(pages.get(key)));
  }

  return {
    page: async () => ({}),
    pageOf: async (key) => pages.get(key),
    keepPage: async () => {},
    changePage: async (changes) => changePage(changes),
    project: async (id) => projects.get(id),
    projects: async () => [...projects.values()],
    dropProject: async (id) => {
      projects.delete(id);
    },
    photo: async (key) => photos.get(key),
    keepProject: async (record, { pictures = {}, changes = {} } = {}) => {
      const kept = { ...record, revision: record.revision + 1 };
      projects.set(kept.id, kept);
      for (const [key, address] of Object.entries(pictures)) if (!photos.has(key)) photos.set(key, address);
      changePage(changes);
      return kept;
    },
  };
}
