import { element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { PlanMark } from "../../python/contract.d.ts" */

/**
 * What the letters on the drawing of a board mean, with the size of each piece; nothing for a board without any.
 * @param {PlanMark[]} [marks] a view that an older version kept has none
 */
export const planMarks = (marks = []) =>
  marks.length ? element("ul", { class: "plan-marks", "aria-label": "Pieces of this board" }, marks.map(row)) : null;

/** @param {PlanMark} mark */
const row = ({ mark, name, size, count }) =>
  element(
    "li",
    {},
    element("strong", {}, mark),
    element("span", {}, unbroken(`${count > 1 ? `${count} × ` : ""}${name}, ${size}`)),
  );
