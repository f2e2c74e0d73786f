import { element, present } from "../element.js";
import { partSize } from "../numbers/part-size.js";
import { unbroken } from "../numbers/unbroken.js";
import { drawing } from "../pictures/drawing.js";
import { showTouched } from "../pictures/part-touch.js";
import { pieceKey } from "./piece-key.js";
import { planCuts } from "./plan-cuts.js";
import { planMarks } from "./plan-marks.js";

/** @import { Drawing, Piece, PlanBoard } from "../../python/contract.d.ts" */

/** So high that the first cuts are in sight below it. */
const HIGH = 300;
/** @type {Record<PlanBoard["state"], string>} */
const STATE = { "to cut": "", begun: "begun", cut: "all cut", bad: "bad board" };

/**
 * What a board is, and what is done of it, in words.
 * @param {PlanBoard} board
 */
export const boardSaid = ({ stock, bought, state }) =>
  [stock, bought && state === "to cut" ? "to buy" : "", STATE[state]].filter(Boolean).join(", ");

/**
 * A board of a plan behind its name: its drawing, its cuts, its offcuts. It is drawn when it is first open.
 * @param {PlanBoard} board
 * @param {object} how
 * @param {Piece[]} how.pieces those of the project
 * @param {boolean} how.isOpen
 * @param {(isOpen: boolean) => void} how.onFold
 * @param {HTMLElement | null} how.act what is done with what is left of it
 */
export function planBoard(board, { pieces, isOpen, onFold, act }) {
  const inside = element("div", { class: "plan-board-inside" });
  const draw = () => inside.replaceChildren(...present([...boardInFull(board, pieces), act]));
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
function boardInFull({ drawing: drawn, marks, cuts, ...board }, pieces) {
  const left = leftOver(board);
  return [
    ...(drawn ? boardDrawing(drawn, pieces) : []),
    planMarks(marks),
    planCuts(cuts),
    left ? element("p", {}, left) : null,
  ];
}

/**
 * What is left of a board, in words; "" for nothing.
 * @param {Pick<PlanBoard, "offcuts" | "saved">} board
 */
export const leftOver = ({ offcuts, saved }) =>
  unbroken(offcuts.length ? `Left over${saved ? ", in the wood on hand" : ""}: ${offcuts.join("; ")}` : "");

/**
 * The drawing of a board, and the piece of it that is touched.
 * @param {Drawing} drawn
 * @param {Piece[]} pieces
 */
function boardDrawing(drawn, pieces) {
  const touched = element("p", { class: "plan-touched", "aria-live": "polite" });
  const picture = drawing(drawn, { high: HIGH, parts: { labelOf, open } });
  function open(/** @type {string} */ key) {
    showTouched(picture, key);
    touched.textContent = labelOf(key);
  }
  function labelOf(/** @type {string} */ key) {
    const piece = pieces.find((each) => pieceKey(each) === key);
    return piece ? `${piece.name}, ${partSize(piece)}` : "";
  }
  return [element("div", {}, picture), touched];
}
