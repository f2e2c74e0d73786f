/** @import { NotDone } from "../shapes.d.ts" */

/**
 * Why nothing was done, and what can be.
 * @param {string} kind
 * @param {string} message
 * @param {string} remedy
 * @returns {NotDone}
 */
export const notDone = (kind, message, remedy) => ({ ok: false, error: { kind, message, remedy } });

export const TAKEN_BACK = notDone("taken back", "Canceled. Nothing changed.", "What you typed is still here.");
export const GONE = notDone(
  "store",
  "This project isn’t in this browser anymore.",
  "Open another, or restore it from a backup.",
);
export const ELSEWHERE = notDone(
  "elsewhere",
  "Another project is open now. Nothing changed.",
  "Open the project this belongs to and try again.",
);
export const NOTHING_LEFT = notDone("nothing", "There’s nothing left to undo.", "");
export const UNDONE = notDone("nothing", "That’s already undone.", "Nothing changed.");
