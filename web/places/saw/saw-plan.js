import { button, element } from "../../widgets/element.js";
import { pieceKey } from "../../widgets/project/piece-key.js";
import { planCuts } from "../../widgets/project/plan-cuts.js";
import { go } from "../go.js";
import { notice } from "../notices.js";

/** @import { PieceAt, PlanBoard, View } from "../../python/contract.d.ts" */
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
 * @param {number} group its place among the groups
 * @param {PieceAt} place
 * @returns {OnBoard | null}
 */
export function onBoard(view, group, place) {
  if (view.cuts.order !== "plan") return null;
  const board = boardsOf(view).filter(({ state }) => state !== "bad")[group];
  if (!board) return null;
  const off = board.cuts.flatMap(({ pieces, done }) => pieces.map((each) => ({ key: pieceKey(each), done })));
  const own = off.filter(({ key }) => key === pieceKey(place));
  return { board, count: own.length, left: own.filter(({ done }) => !done).length };
}

/**
 * Below the piece: the cuts of its board, and what is done where the board turns out bad.
 * @param {App} app
 * @param {PlanBoard} board
 * @param {string} look
 */
export const boardTools = (app, board, look) => [
  element("h3", { class: "saw-wide" }, board.name),
  element("div", { class: "saw-wide" }, planCuts(board.cuts)),
  button("Bad board", () => isBad(app, board), { class: look, "aria-label": `Bad board: ${board.name}` }),
];

/**
 * @param {App} app
 * @param {PlanBoard} board
 */
async function isBad(app, { key }) {
  const done = await app.project.tryChange({ act: "board_bad", board: key });
  if (!done.ok) notice([done.error.message, done.error.remedy].join(" "));
  else toPlanAgain(app, done.said);
}

/**
 * What was done, and that the plan is not whole any more, with the way to another one.
 * @param {App} app
 * @param {string} said
 * @returns whether there is something to plan again
 */
export function toPlanAgain(app, said) {
  const stale = app.state.get().view?.plan?.stale;
  if (stale) notice(`${said} ${stale}`, { label: "Plan again", run: () => planAgain(app), stays: true });
  return Boolean(stale);
}

/** @param {App} app */
export function planAgain(app) {
  app.planning.start();
  go("plan");
}
