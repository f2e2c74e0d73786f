import { element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { PlanCut } from "../../python/contract.d.ts" */

/**
 * The cuts of a board in their order: what is done, what is in the hand after each and what goes back on the pile.
 * @param {PlanCut[]} cuts
 * @param {{hasBoxes?: boolean}} [how] with a box each to be ticked off on paper
 */
export const planCuts = (cuts, { hasBoxes = false } = {}) =>
  element(
    "ol",
    { class: "plan-cuts" },
    cuts.map((cut) => row(cut, hasBoxes ? box(cut) : null)),
  );

/**
 * What is cut of several boards before the saw is set otherwise.
 * @param {string[]} together
 */
export const planTogether = (together) =>
  together.length
    ? element(
        "ul",
        { class: "plan-together", "aria-label": "First cuts of these boards" },
        together.map((said) => element("li", {}, unbroken(said))),
      )
    : null;

/** @param {PlanCut} cut */
const box = ({ done }) =>
  element("span", { class: done ? "box ticked" : "box", role: "img", "aria-label": done ? "Cut" : "Not cut" });

/**
 * @param {PlanCut} cut
 * @param {HTMLElement | null} ticked
 */
const row = ({ said, hand, pile, done }, ticked) =>
  element(
    "li",
    { class: done ? "plan-cut-done" : null },
    element("span", { class: "plan-cut-said" }, unbroken(said), done && !ticked ? " ✓ cut" : null, ticked),
    aside("In hand", hand),
    aside("Back on the pile", pile),
  );

/**
 * @param {string} label
 * @param {string} what
 */
const aside = (label, what) => (what ? element("span", { class: "plan-aside" }, unbroken(`${label}: ${what}`)) : null);
