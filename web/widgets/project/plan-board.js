import { element } from "../element.js";
import { partSize } from "../numbers/part-size.js";
import { unbroken } from "../numbers/unbroken.js";
import { drawing } from "../pictures/drawing.js";
import { showTouched } from "../pictures/part-touch.js";
import { pieceKey } from "./piece-key.js";
import { planCuts } from "./plan-cuts.js";

/** @import { Piece, PlanBoard } from "../../python/contract.d.ts" */

/** @type {Record<PlanBoard["state"], string>} */
const STATE = { "to cut": "", begun: "begun", cut: "all cut", bad: "bad board" };

/**
 * What a board is, and what is done of it, in words.
 * @param {PlanBoard} board
 */
export const boardSaid = ({ stock, bought, state }) =>
  [stock, bought ? "to buy" : "", STATE[state]].filter(Boolean).join(", ");

/**
 * A board of a plan behind its name: its drawing, its cuts, its offcuts. It is drawn when it is first open.
 * @param {PlanBoard} board
 * @param {object} how
 * @param {Piece[]} how.pieces those of the project
 * @param {boolean} how.isOpen
 * @param {(isOpen: boolean) => void} how.onFold
 */
export function planBoard(board, { pieces, isOpen, onFold }) {
  const inside = element("div", { class: "plan-board-inside" });
  const draw = () => inside.replaceChildren(...boardInFull(board, pieces));
  const node = element(
    "details",
    { class: "group plan-board", open: isOpen },
    element("summary", {}, element("h4", {}, board.name), element("span", { class: "plan-stock" }, boardSaid(board))),
    inside,
  );
  if (isOpen) draw();
  node.addEventListener("toggle", () => {
    onFold(node.open);
    if (node.open && !inside.firstChild) draw();
  });
  return node;
}

/**
 * @param {PlanBoard} board
 * @param {Piece[]} pieces
 */
function boardInFull(board, pieces) {
  const touched = element("p", { class: "help", "aria-live": "polite" });
  const picture = boardDrawing(board, { pieces, open: tell });
  function tell(/** @type {string} */ key) {
    showTouched(picture, key);
    touched.textContent = labelIn(pieces)(key);
  }
  const offcuts = board.offcuts.length ? [element("p", {}, unbroken(`Left over: ${board.offcuts.join("; ")}`))] : [];
  return [picture, touched, planCuts(board.cuts), ...offcuts];
}

/**
 * The drawing of a board, each piece of the project in it to be touched.
 * @param {PlanBoard} board
 * @param {{pieces: Piece[], open(key: string): void}} how
 */
export const boardDrawing = (board, { pieces, open }) =>
  element("div", { class: "plan-picture" }, drawing(board.drawing, { parts: { labelOf: labelIn(pieces), open } }));

/** @param {Piece[]} pieces */
const labelIn = (pieces) => (/** @type {string} */ key) => {
  const piece = pieces.find((each) => pieceKey(each) === key);
  return piece ? `${piece.name}, ${partSize(piece)}` : "";
};
