import { viewOf } from "./identity.js";
import { recordOfToday } from "./of-before.js";
import { recentFirst } from "./projects-last-opened.js";
import { GONE } from "./refusals.js";
import { thisMinute } from "./when.js";

/** @import { Ask } from "../../python/contract.d.ts" */
/** @import { Database, ProjectRecord, StateKeeper } from "../shapes.d.ts" */

/**
 * The project that is open, as the state has it.
 * @param {{database: Database, state: StateKeeper, ask: Ask}} page
 */
export function openedProject({ database, state, ask }) {
  /**
   * Without a plan there is no order by it: another project may have one.
   * @param {ProjectRecord} record
   */
  function orderOf({ document }) {
    const { order } = state.get().saw;
    return order === "plan" && !document.plan ? "set-up" : order;
  }

  /**
   * A project that can't be shown, as one saved by a newer version, is left as it is.
   * @param {ProjectRecord} record
   */
  async function view(record) {
    const now = thisMinute() || null;
    const seen = await ask({ do: "view", document: record.document, order: orderOf(record), now });
    const isOfBefore = seen.ok && seen.schema !== record.document.schema;
    const today = isOfBefore ? await recordOfToday({ database, state, ask }, record) : null;
    if (today) return view(today);
    const shown = seen.ok ? { view: viewOf(record, seen, now), unshown: null } : { view: null, unshown: seen.error };
    const left = seen.ok ? seen.pieces.reduce((sum, piece) => sum + piece.left, 0) : 0;
    const lastOpened = { ...state.get().lastOpened, [record.id]: { at: Date.now(), left } };
    state.set({ record, openProject: record.id, lastOpened, ...shown });
  }

  return {
    view,
    /** @param {string} id */
    async open(id) {
      const record = await database.project(id);
      if (!record) return GONE;
      await view(record);
      return { ok: true };
    },
    /** When the open one is gone, the one that was open before it is opened, if there is one. */
    async leave() {
      const [other] = recentFirst(await database.projects(), state.get());
      if (other) await view(other);
      else state.set({ record: null, openProject: null, view: null, unshown: null });
    },
  };
}
