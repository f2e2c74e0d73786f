import { notDone, UNDONE } from "./refusals.js";
import { actOf } from "./undo-redo.js";

/** @import { Doing, NotDone, Step } from "../shapes.d.ts" */

/** What is done at the saw, and so what its Undo takes back. */
const AT_THE_SAW = ["cut", "spoil", "recut", "trial", "about", "board_bad"];

const changedSince = ({ of }) =>
  notDone(
    "elsewhere",
    `Can’t undo this by itself: ${of} Something it touches has changed since.`,
    "Undo the later change first, on the Project tab.",
  );

/**
 * What an act that undoes puts back: ids of entries, or what it is called; "all" for a whole document.
 * @param {any} act of any kind: the core knows what each has
 * @returns {string[]}
 */
function touched(act) {
  if (act.document) return ["all"];
  if (act.acts) return act.acts.flatMap(touched);
  const ids = [...(act.entries ?? []), act.entry, act].map((each) => each?.id).filter(Boolean);
  return ids.length ? ids : [act.act];
}

/**
 * Whether what one step changed is as that step left it, for nothing later touched it.
 * @param {Step[]} steps
 * @param {number} at
 */
function isLatestOfItsOwn(steps, at) {
  const own = touched(actOf(steps[at]));
  const later = steps.slice(at + 1).flatMap((step) => touched(actOf(step)));
  const isWhole = [...own, ...later].includes("all");
  return later.length === 0 || !(isWhole || own.some((each) => later.includes(each)));
}

/**
 * The step to take back by itself, whatever was done after it, here or in another tab.
 * @param {Step[]} steps of the history that are done, the last one last
 * @param {number} id of the step
 * @returns {Step | NotDone} the step, or why it can't be undone
 */
export function oneStep(steps, id) {
  const at = steps.findIndex((each) => each.id === id);
  if (at < 0) return UNDONE;
  return isLatestOfItsOwn(steps, at) ? steps[at] : changedSince(steps[at]);
}

/**
 * The id of the last step done at the saw that can be taken back by itself; null for none.
 * @param {Step[]} steps
 */
export function lastAtTheSaw(steps) {
  const at = steps.findLastIndex(({ did }) => did && AT_THE_SAW.includes(did));
  return at >= 0 && isLatestOfItsOwn(steps, at) ? steps[at].id : null;
}
