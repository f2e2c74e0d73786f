/** @import { ProjectRecord, State } from "../shapes.d.ts" */

/**
 * Projects, those that were open last on this device first.
 * @param {ProjectRecord[]} records
 * @param {Pick<State, "recent">} state
 */
export function recentFirst(records, { recent }) {
  const when = (/** @type {ProjectRecord} */ { id }) => recent[id]?.when ?? "";
  const byName = (/** @type {ProjectRecord} */ one, /** @type {ProjectRecord} */ other) =>
    one.document.name.localeCompare(other.document.name);
  return [...records].sort((one, other) => when(other).localeCompare(when(one)) || byName(one, other));
}
