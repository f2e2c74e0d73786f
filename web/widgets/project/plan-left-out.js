import { button, element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { LeftOut, PieceAt } from "../../python/contract.d.ts" */

/**
 * The pieces that no wood holds, each with what can be done and the way to its line.
 * @param {LeftOut[]} left
 * @param {(place: PieceAt) => void} open
 */
export const planLeftOut = (left, open) =>
  left.length
    ? element(
        "section",
        { class: "plan-left-out", "aria-label": "Not in the plan" },
        element("h3", {}, "Not in the plan"),
        left.map((each) => row(each, open)),
      )
    : null;

/**
 * @param {LeftOut} out
 * @param {(place: PieceAt) => void} open
 */
function row({ name, pieces: [first], error }, open) {
  const opener = first ? button("Open its line", () => open(first), { "aria-label": `Open its line: ${name}` }) : null;
  return element(
    "div",
    { class: "plan-out" },
    element("p", {}, element("strong", {}, name)),
    element("p", { class: "error" }, unbroken(`${error.message} ${error.remedy}`)),
    opener,
  );
}
