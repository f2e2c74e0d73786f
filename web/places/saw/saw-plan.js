import { element } from "../../widgets/element.js";
import { pieceKey } from "../../widgets/project/piece-key.js";
import { planCuts } from "../../widgets/project/plan-cuts.js";
import { planMarks } from "../../widgets/project/plan-marks.js";
import { saveOffcuts } from "../forms/save-offcuts.js";
import { go } from "../go.js";
import { inWords, notice } from "../notices.js";

/** @import { CutGroup, PieceAt, PlanBoard, View } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @typedef {{board: PlanBoard, count: number, left: number}} OnBoard so many of a piece come out of a board */

/**
 * The boards of the project's plan, in the order in which they are cut.
 * @param {View} view
 */
const boardsOf = ({ plan }) => (plan?.groups ?? []).flatMap(({ boards }) => boards);

/**
 * What of a piece comes out of the board that a group of cuts is; null where it is of none.
 * @param {View} view
 * @param {CutGroup} group
 * @param {PieceAt} place
 * @returns {OnBoard | null}
 */
export function onBoard(view, { board: key }, place) {
  const board = key && boardsOf(view).find((each) => each.key === key);
  if (!board) return null;
  const many = (/** @type {PieceAt[]} */ some) => some.filter((each) => pieceKey(each) === pieceKey(place)).length;
  return { board, count: many(board.pieces), left: many(board.left) };
}

/**
 * What has to be cut of the board before a piece of it can be: the next such cut, and how many more there are; "" for none.
 * @param {PieceAt & {board: PlanBoard | null}} piece
 */
export function cutFirst({ board, ...piece }) {
  const [first, ...more] = (board?.cuts ?? []).filter(({ before = [] }) =>
    before.some((each) => pieceKey(each) === pieceKey(piece)),
  );
  if (!first || more.length === 0) return first?.said ?? "";
  return `${first.said} Then ${more.length} more ${more.length === 1 ? "cut" : "cuts"}, listed below.`;
}

/**
 * The cuts of a board and what comes out of it, below the piece that is in hand.
 * @param {PlanBoard} board
 */
export const boardCuts = ({ name, cuts, marks }) =>
  element("section", { class: "saw-wide" }, element("h3", {}, name), planCuts(cuts), planMarks(marks));

/**
 * What is done with the plan at the saw: a board turns out bad, or what it lacks is planned again.
 * @param {App} app
 * @param {PlanBoard | null} board
 * @param {(label: string, run: () => unknown) => HTMLElement} tool makes a key
 */
export const planTools = (app, board, tool) => [
  board ? tool("Bad board", () => isBad(app, board)) : null,
  board ? saveOffcuts(app, board, { class: "button saw-tool" }) : null,
  app.state.get().view?.plan?.stale ? tool("Plan again", () => planAgain(app)) : null,
];

/**
 * @param {App} app
 * @param {PlanBoard} board
 */
async function isBad(app, { key }) {
  const done = await app.project.tryChange({ act: "board_bad", board: key });
  if (!done.ok) notice(inWords(done.error));
  else if (!toPlanAgain(app, done.said)) notice(done.said);
}

/**
 * What was done, with the way to another plan where this one is not whole any more: what it lacks is told at the piece.
 * @param {App} app
 * @param {string} said
 * @returns whether there is something to plan again
 */
export function toPlanAgain(app, said) {
  const stale = app.state.get().view?.plan?.stale;
  if (stale) notice(said, { label: "Plan again", run: () => planAgain(app), stays: true });
  return Boolean(stale);
}

/** @param {App} app */
function planAgain(app) {
  app.planning.start();
  go("plan");
}
