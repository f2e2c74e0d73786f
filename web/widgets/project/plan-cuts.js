import { element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { PlanCut } from "../../python/contract.d.ts" */

/**
 * The cuts of a board in their order: what is done, what is in the hand after each and what goes back on the pile.
 * @param {PlanCut[]} cuts
 */
export const planCuts = (cuts) => element("ol", { class: "plan-cuts" }, cuts.map(row));

/** @param {PlanCut} cut */
const row = ({ said, hand, pile, done }) =>
  element(
    "li",
    { class: done ? "plan-cut-done" : null },
    element("span", { class: "plan-cut-said" }, unbroken(said), done ? " ✓ cut" : null),
    aside("In hand", hand),
    aside("Back on the pile", pile),
  );

/**
 * @param {string} label
 * @param {string} what
 */
const aside = (label, what) => (what ? element("span", { class: "plan-aside" }, unbroken(`${label}: ${what}`)) : null);
