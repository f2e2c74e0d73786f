import { element } from "../element.js";
import { briefly } from "../numbers/fraction.js";
import { brief } from "../numbers/part-size.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { Piece } from "../../python/contract.d.ts" */

/** @typedef {Piece & {wrong: string, waits: string, isShown: boolean}} PieceListed with what is wrong with those that are cut */

/**
 * A piece in a list: its name, its length and width, and how many of it are cut; a touch opens it.
 * @param {PieceListed} each
 * @param {() => void} open
 */
export const pieceLine = (each, open) =>
  element(
    "li",
    {},
    element(
      "button",
      { type: "button", class: "button piece-line", onclick: open, "aria-current": each.isShown ? "true" : null },
      element("span", { class: "piece-sign", "aria-hidden": "true" }, sign(each)),
      element("strong", { class: "piece-line-name" }, each.name),
      element(
        "span",
        { class: "piece-line-size" },
        briefly(each.length, "fraction-large"),
        each.width ? element("span", { class: "piece-line-width" }, `× ${brief(each.width)}`) : null,
      ),
      element("span", { class: each.wrong ? "piece-state piece-state-wrong" : "piece-state" }, unbroken(state(each))),
    ),
  );

/** @param {PieceListed} each */
function sign({ wrong, left, cut }) {
  if (wrong) return "✗";
  if (left === 0) return "✓";
  return cut > 0 ? "◐" : "○";
}

/**
 * What is done of it and what is to be done, in words.
 * @param {PieceListed} each
 */
function state({ wrong, waits, left, count, cut, spoiled }) {
  const done = left === 0 ? "All cut" : `${left} to cut${cut > 0 ? `, ${cut} of ${count} cut` : ""}`;
  const scrapped = spoiled > 0 ? `, ${spoiled} scrapped` : "";
  const held = waits && left > 0 ? `; ${waits}` : "";
  return [count === 1 && left === 0 ? "Cut" : done, scrapped, held, wrong ? `. ${wrong}` : ""].join("");
}
