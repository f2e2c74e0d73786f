import { element } from "../element.js";
import { partSize } from "../numbers/part-size.js";
import { drawing } from "../pictures/drawing.js";
import { pieceOf } from "./case-drawing.js";

/** @import { Case, CasePart, Piece } from "../../python/contract.d.ts" */

/** So high that two rows of views and the parts go on a page of either paper. */
export const HIGH = 280;

/**
 * A case on a page of its own: its four views, and its parts by their letters.
 * @param {Case} told
 * @param {Piece[]} pieces those of the project
 */
export function caseSheet({ name, parts, views, note }, pieces) {
  return element(
    "section",
    { class: "case-sheet", "aria-label": `Drawing of ${name}` },
    element("h4", {}, `${name}: front, side, section, plan`),
    element(
      "div",
      { class: "case-sheet-views" },
      views.map(({ title, drawing: drawn }) =>
        element("figure", {}, drawing(drawn, { high: HIGH }), element("figcaption", {}, title)),
      ),
    ),
    note ? element("p", {}, note) : null,
    element(
      "ul",
      { class: "case-sheet-parts" },
      parts.map((part) => row(part, pieceOf(part, pieces))),
    ),
  );
}

/**
 * @param {CasePart} part
 * @param {Piece} [piece]
 */
const row = ({ letter }, piece) =>
  piece
    ? element(
        "li",
        {},
        element("strong", {}, letter),
        element("span", {}, `${piece.name}, ${piece.count}×`),
        element("span", {}, partSize(piece)),
      )
    : null;
