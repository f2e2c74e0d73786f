/** @import { NotDone } from "../shapes.d.ts" */

/**
 * Why nothing was done, and what can be.
 * @param {string} kind
 * @param {string} message
 * @param {string} remedy
 * @returns {NotDone}
 */
export const notDone = (kind, message, remedy) => ({ ok: false, error: { kind, message, remedy } });

export const TAKEN_BACK = notDone("taken back", "Taken back: nothing was changed.", "What you typed is still here.");
export const GONE = notDone(
  "store",
  "This project is no longer in the browser's store.",
  "Open another, or restore it from a backup.",
);
export const ELSEWHERE = notDone(
  "elsewhere",
  "Another project is open now: nothing was changed.",
  "Open the one that this belongs to, then do it again.",
);
export const NOTHING_LEFT = notDone("nothing", "There is nothing left to take back.", "");
export const UNDONE = notDone("nothing", "That was undone already.", "Nothing was changed.");
