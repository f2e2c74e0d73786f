import { draftKey } from "../page/state.js";
import { identity } from "./identity.js";

/** @import { Draft, ProjectRecord, State, StateKeeper } from "../shapes.d.ts" */

/**
 * Where the correction of a kept entry waits until it is kept in its turn.
 * @param {ProjectRecord | null} record
 * @param {string} id
 */
export const correctionKey = (record, id) => draftKey(`${identity(record)}/${id}`);

/**
 * The same for what belongs to a reading beside its number.
 * @param {ProjectRecord | null} record
 * @param {string} id
 */
export const detailsKey = (record, id) => correctionKey(record, `${id}/details`);

/**
 * Where a piece waits that is begun from an entry, until it is kept.
 * @param {ProjectRecord | null} record
 * @param {string} id
 */
export const pieceKey = (record, id) => correctionKey(record, `${id}/piece`);

/**
 * Whether something was typed over a kept entry that was not kept.
 * @param {State} state
 * @param {string} id
 */
export const isUnkept = (state, id) =>
  Boolean(state.record && [correctionKey, detailsKey].some((keyOf) => state[keyOf(state.record, id)]?.changed));

/**
 * All that was typed over what a record holds, and not kept.
 * @param {State} state
 * @param {ProjectRecord} record
 */
export const unkeptOf = (state, record) =>
  Object.keys(state)
    .filter((key) => key.startsWith(correctionKey(record, "")) && state[key]?.changed)
    .flatMap((key) => state[key].text ?? Object.values(state[key].values ?? state[key].typed ?? {}))
    .filter((each) => typeof each === "string" && each.trim());

/**
 * What is typed and not yet kept, in one slot of the state: it outlives the page.
 * @param {StateKeeper} state
 * @param {`draft:${string}`} slot
 */
export const draftIn = (state, slot) => ({
  get: () => state.get()[slot] ?? {},
  keep: (/** @type {Draft} */ patch) => state.set({ [slot]: { ...state.get()[slot], ...patch } }),
  drop: () => state.set({ [slot]: undefined }),
});

/**
 * Whether two values typed or kept are the same; what is not there is as blank.
 * @param {unknown} one
 * @param {unknown} other
 */
export const same = (one, other) => JSON.stringify(one ?? "") === JSON.stringify(other ?? "");
