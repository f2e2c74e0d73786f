/** The questions that are at hand on this device: those answered last, and those that were pinned. */

/** @import { StateKeeper } from "../shapes.d.ts" */

/** More than are shown: some of them may be pinned, and then they stand there. */
const MOST = 12;

/**
 * A question was answered.
 * @param {StateKeeper} state
 * @param {string} key of the question
 */
export function answeredNow(state, key) {
  const { recent } = state.get();
  if (recent[0] === key) return;
  state.set({ recent: [key, ...recent.filter((each) => each !== key)].slice(0, MOST) });
}

/**
 * @param {StateKeeper} state
 * @param {string} key
 */
export const isPinned = (state, key) => state.get().pinned.includes(key);

/**
 * Pin a question, as the last one, or unpin it.
 * @param {StateKeeper} state
 * @param {string} key
 * @returns {boolean} whether it is pinned now
 */
export function turnPin(state, key) {
  const others = state.get().pinned.filter((each) => each !== key);
  const isNow = !isPinned(state, key);
  state.set({ pinned: isNow ? [...others, key] : others });
  return isNow;
}
