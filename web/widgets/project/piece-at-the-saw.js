import { element } from "../element.js";
import { fraction } from "../numbers/fraction.js";
import { brief } from "../numbers/part-size.js";
import { unbroken } from "../numbers/unbroken.js";
import { boldDrawing } from "../pictures/bold-drawing.js";
import { drawing } from "../pictures/drawing.js";
import { litIn } from "../pictures/lit.js";
import { pieceKey } from "./piece-key.js";

/** @import { End, Ends, Piece, PlanBoard } from "../../python/contract.d.ts" */

/**
 * With what is said of it here, the board that it comes out of by a plan, and what is cut of that before it.
 * @typedef {Piece & {isLast?: boolean, mark?: string, wrong?: string, board?: PlanBoard | null, first?: string,
 *   leftInAll?: number}} PieceShown
 */

/** Where there are more steps than this, those without a number take smaller letters. */
const FEW = 3;
/** So many signs of each end have room in figures as large as the fraction's. */
const SHORT = 5;
/** A name longer than this takes smaller letters, not a third line. */
const LONG = 30;

/**
 * One piece to cut, as large as the screen allows: the length, the piece as it lies, how each end is cut.
 * @param {PieceShown} each
 */
export function piece(each) {
  return element(
    "article",
    { class: "piece" },
    head(each),
    each.left > 0 || each.wrong ? null : element("p", { class: "piece-done" }, done(each)),
    each.first ? element("p", { class: "piece-first" }, unbroken(`First: ${each.first}`)) : null,
    each.mark ? element("p", { class: "entry-mark" }, each.mark) : null,
    each.wrong ? element("p", { class: "piece-wrong" }, unbroken(each.wrong)) : null,
    element(
      "div",
      { class: "piece-length" },
      fraction(each.length, "fraction-giant"),
      element(
        "div",
        { class: "piece-aside" },
        across(each),
        each.length_along ? element("p", { class: "piece-along" }, each.length_along) : null,
        each.length.dropped_text ? element("p", {}, unbroken(each.length.dropped_text)) : null,
      ),
    ),
    element("div", { class: "piece-room" }, picture(each)),
    each.ends ? ends(each.ends, Boolean(each.board)) : null,
    element("p", { class: "piece-more", "aria-hidden": "true" }, "More below ↓"),
  );
}

/**
 * What of it is cut: all that comes out of this board may not be all that is wanted.
 * @param {PieceShown} each
 */
function done({ isLast, leftInAll = 0 }) {
  if (leftInAll > 0) return "Done on this board";
  return isLast ? "All pieces cut" : "All cut";
}

/**
 * Its board with the piece lit up, or else the piece itself.
 * @param {PieceShown} each
 */
function picture({ board, drawing: own, name, ...place }) {
  if (board?.drawing) return boldDrawing(litIn(board.drawing, { part: pieceKey(place), name }));
  return own ? boldDrawing(own) : null;
}

/**
 * How wide a panel or board with square ends is. One with miters or bevels has the room for what the saw is set to.
 * @param {Piece} each
 */
const across = ({ width, length_along: along }) =>
  width && !along ? element("p", { class: "piece-across" }, `× ${brief(width)}`) : null;

/**
 * What it is called, which stays on the screen while the rest of it scrolls.
 * @param {Piece} each
 */
export const pieceName = ({ name }) =>
  element("h2", { class: `piece-name ${name.length > LONG ? "piece-name-long" : ""}` }, name);

/** @param {PieceShown} each */
const head = ({ place, left, count, spoiled }) =>
  element(
    "div",
    { class: "piece-head" },
    element("p", { class: "piece-place" }, unbroken(place)),
    left > 0
      ? element("p", { class: "piece-left" }, `${left} left of ${count}${spoiled > 0 ? `, ${spoiled} scrapped` : ""}`)
      : null,
  );

/**
 * What is told of a piece, and its drawing with every measure.
 * @param {Piece} each
 */
export const pieceInFull = (each) => [
  told(each) ? element("p", { class: "piece-told" }, told(each)) : null,
  ...(each.about ?? []).map((line) => element("p", { class: "piece-told" }, unbroken(line))),
  each.drawing ? drawing(each.drawing) : null,
];

/** @param {Piece} each */
const told = ({ material, grain, place }) => [material, grain, place].filter(Boolean).join(", ");

/**
 * @param {Ends} both
 * @param {boolean} isOnBoard the drawing of a board takes room: ends that are alike are told once
 */
function ends({ left, right }, isOnBoard) {
  const said = (/** @type {End} */ { cut, at_the_saw: steps }) => [cut, ...steps].join();
  if (isOnBoard && said(left) === said(right) && left.at_the_saw.length === 1)
    return element("dl", { class: "ends ends-alike" }, end("Both ends", left));
  const isShort = [left, right].every(({ at_the_saw: [first] }) => (first ?? "").length <= SHORT);
  return element("dl", { class: `ends ${isShort ? "ends-short" : ""}` }, end("Left", left), end("Right", right));
}

/**
 * @param {string} label
 * @param {End} end
 */
const end = (label, { cut, at_the_saw: steps }) =>
  element(
    "div",
    {},
    element("dt", {}, `${label}: ${cut}`),
    steps.map((step) =>
      element("dd", { class: steps.length > FEW && !/\d/.test(step) ? "end-way" : null }, unbroken(step)),
    ),
  );
