import { begun } from "./all-projects.js";
import { identity } from "./identity.js";
import { changedMeanwhile } from "./meanwhile.js";
import { ELSEWHERE, TAKEN_BACK } from "./refusals.js";
import { done } from "./undo-redo.js";

/** @import { Ask } from "../../python/contract.d.ts" */
/** @import { Along, Changed, Database, Done, How, NotDone, ProjectRecord, StateKeeper } from "../shapes.d.ts" */

/**
 * Makes changes of the open project: each is shown when other numbers follow from it, written with strict durability,
 * and only then drawn. When another tab was first, ours is made again on its, unless both changed one entry.
 * @param {object} page
 * @param {Database} page.database
 * @param {StateKeeper} page.state
 * @param {Ask} page.ask
 * @param {(changed: Done) => Promise<boolean>} page.accept shows what a change brings; whether it is kept
 * @param {(before: ProjectRecord, after: ProjectRecord, store: (along: Along) => Promise<ProjectRecord | null>) =>
 *   Promise<ProjectRecord | null>} page.along stores with a change the lines of the tally that follow it (tally.js)
 * @param {(record: ProjectRecord) => Promise<void>} page.view shows a record
 * @param {(news: {id: string}) => void} page.tellOthers of each that was kept
 */
export function changeMaker({ database, state, ask, accept, along, view, tellOthers }) {
  /**
   * The latest record, or why nothing can be done to it.
   * @param {How} how
   * @returns {Promise<ProjectRecord | NotDone>}
   */
  async function latestOf({ of, was = null }) {
    const now = state.get().record;
    if (of !== undefined && identity(now) !== of) return ELSEWHERE;
    const latest = now ? ((await database.project(now.id)) ?? now) : await begun(ask);
    if ("ok" in latest) return latest;
    const refused = now && identity(latest) !== identity(now) ? ELSEWHERE : changedMeanwhile(latest.document, was);
    if (refused) await view(latest);
    return refused ?? latest;
  }

  /**
   * @param {(latest: ProjectRecord) => Promise<Changed>} work from the latest record to the core's answer
   * @param {How} [how]
   * @returns {Promise<Changed>}
   */
  return async function make(work, { history = done, pictures = {}, ...on } = {}) {
    for (;;) {
      const latest = await latestOf(on);
      if ("ok" in latest) return latest;
      const worked = await work(latest);
      if (!worked.ok || !worked.undo) return worked;
      const changed = { ...worked, undo: worked.undo, said: history.said(latest, worked) };
      if (history.asks(changed) && !(await accept(changed))) return TAKEN_BACK;
      const { document, documentId = latest.documentId } = changed;
      const record = { ...latest, document, documentId, ...history.kept(latest, changed) };
      const kept = await along(latest, record, (more) => database.keepProject(record, { ...more, pictures }));
      if (!kept) continue;
      tellOthers({ id: kept.id });
      await view(kept);
      return { ...changed, step: kept.revision };
    }
  };
}
