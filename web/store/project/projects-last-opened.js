/** @import { ProjectRecord, State } from "../shapes.d.ts" */

/**
 * Projects, those that were open last on this device first.
 * @param {ProjectRecord[]} records
 * @param {Pick<State, "lastOpened">} state
 */
export function recentFirst(records, { lastOpened }) {
  const at = (/** @type {ProjectRecord} */ { id }) => lastOpened[id]?.at ?? 0;
  const byName = (/** @type {ProjectRecord} */ one, /** @type {ProjectRecord} */ other) =>
    one.document.name.localeCompare(other.document.name);
  return [...records].sort((one, other) => at(other) - at(one) || byName(one, other));
}
