import { freshId } from "../page/fresh-id.js";
import { dated } from "./when.js";

/** @import { Ask, Document } from "../../python/contract.d.ts" */
/** @import { Database, NotDone, ProjectRecord, StateKeeper } from "../shapes.d.ts" */

/**
 * @param {Document} document
 * @returns {ProjectRecord}
 */
const fresh = (document) => ({ id: freshId(), revision: 0, document, undo: [], redo: [] });

/**
 * A project with nothing in it, not kept yet.
 * @param {Ask} ask
 * @param {string} [name]
 * @returns {Promise<ProjectRecord | NotDone>}
 */
export async function begun(ask, name = "My project") {
  const made = await ask({ do: "change", document: null, act: dated({ act: "begin", name }) });
  return made.ok ? fresh(made.document) : made;
}

/**
 * What is done with whole projects.
 * @param {object} page
 * @param {Database} page.database
 * @param {StateKeeper} page.state
 * @param {Ask} page.ask
 * @param {ReturnType<typeof import("./opened.js").openedProject>} page.opened
 * @param {(news: {id: string, dropped: true}) => void} page.tellOthers
 */
export function allProjects({ database, state, ask, opened, tellOthers }) {
  /**
   * @param {ProjectRecord | NotDone} record
   * @param {Record<string, string>} [pictures]
   */
  async function add(record, pictures = {}) {
    if ("ok" in record) return record;
    const kept = await database.keepProject(record, { pictures });
    if (kept) await opened.view(kept);
    return DONE;
  }

  return {
    open: opened.open,
    /** @param {string} [name] */
    begin: async (name) => add(await begun(ask, name)),
    /**
     * A document from a backup as a project of its own, with its pictures.
     * @param {Document} document
     * @param {Record<string, string>} [pictures]
     */
    add: (document, pictures) => add(fresh(document), pictures),
    /** Draw it again, as after another order at the saw. */
    async look() {
      const { openProject } = state.get();
      if (openProject) await opened.open(openProject);
    },
    /** Write the open one once more where the store was erased; null where it is still there. */
    async keepAgain() {
      const { record } = state.get();
      if (!record || (await database.project(record.id))) return null;
      const kept = await database.keepProject(record);
      await (kept ? opened.view(kept) : opened.open(record.id));
      return DONE;
    },
    /**
     * For good: only a backup brings it back.
     * @param {string} id
     */
    async drop(id) {
      await database.dropProject(id);
      tellOthers({ id, dropped: true });
      if (id === state.get().record?.id) await opened.leave();
      return DONE;
    },
  };
}

const DONE = /** @type {const} */ ({ ok: true });
