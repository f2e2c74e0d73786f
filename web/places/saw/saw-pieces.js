import { isUnkept } from "../../store/project/draft.js";
import { isOldPicture } from "../../store/project/identity.js";
import { pieceKey } from "../../widgets/project/piece-key.js";
import { wrongs } from "./saw-mending.js";
import { onBoard } from "./saw-plan.js";

/** @import { Piece, PlanBoard, View } from "../../python/contract.d.ts" */
/** @import { State } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * By a plan `board` is the one that it comes out of, of which `left` are to be cut yet, `leftInAll` of all boards;
 * `earlier` is the board that the same piece comes out of before, and is not cut of yet.
 * @typedef {Piece & {
 *   spot: string, group: string, waits: string, board: PlanBoard | null, leftInAll: number, earlier: string,
 * }} PieceInTurn
 */

/**
 * What a correction made wrong with pieces already cut, in words; what it is called stands above it.
 * @param {Piece} piece
 */
export const wrongOf = (piece) =>
  wrongs(piece)
    .map(({ said }) => said.replace(`${piece.name}: `, ""))
    .join(" ");

/**
 * The pieces in the order in which they are cut, each with what its group is called. By a plan one that comes out of
 * several boards is there for each, with so many as come out of it; `spot` tells them apart.
 * @param {View} view
 * @returns {PieceInTurn[]}
 */
export function inOrder(view) {
  const all = new Map(view.pieces.map((piece) => [pieceKey(piece), piece]));
  /** @type {Map<string, {times: number, earlier: string}>} */
  const seen = new Map();
  return view.cuts.groups.flatMap((group) =>
    [...new Set(group.pieces.map(pieceKey))].flatMap((key) => {
      const piece = all.get(key);
      if (!piece) return [];
      const { times, earlier } = seen.get(key) ?? { times: 0, earlier: "" };
      const { board, count, left } = onBoard(view, group, piece) ?? { ...piece, board: null };
      seen.set(key, { times: times + 1, earlier: earlier || (left > 0 && board ? board.name : "") });
      const turn = { group: group.said, waits: group.waits, board, leftInAll: piece.left, earlier };
      return [{ ...piece, count, left, ...turn, spot: times === 0 ? key : `${key}#${times}` }];
    }),
  );
}

/**
 * Which piece is shown, and its neighbors; who comes back finds the piece that was left.
 * @param {App} app
 */
export function piecesInTurn(app) {
  let shown = app.state.get().saw.piece;

  /**
   * @returns `{piece, before, after, following, isDone}`, `following` is the next that is to be cut, `isDone` says that
   *   none is; null without pieces
   */
  function now() {
    const { view } = app.state.get();
    // A view that an older version kept lacks what is drawn here; the core tells it anew in a moment.
    const pieces = view?.set_ups ? inOrder(view) : [];
    if (pieces.length === 0) return null;
    const uncut = pieces.filter((each) => each.left > 0 || wrongOf(each));
    const piece = pieces.find(({ spot }) => spot === shown) ?? uncut[0] ?? pieces[0];
    const at = pieces.indexOf(piece);
    shown = piece.spot;
    const following = uncut.find((each) => pieces.indexOf(each) > at) ?? uncut.find((each) => each !== piece);
    const isDone = pieces.every(({ leftInAll }) => leftInAll === 0);
    return { piece, before: pieces[at - 1], after: pieces[at + 1], following, isDone };
  }

  /** @param {PieceInTurn} piece */
  function turnTo(piece) {
    shown = piece.spot;
    hold();
  }

  function hold() {
    const { saw } = app.state.get();
    if (saw.piece !== shown) app.state.set({ saw: { ...saw, piece: shown } });
  }

  return { now, turnTo, hold };
}

/**
 * What must be known of a piece before it is cut; "" where nothing must.
 * @param {PieceInTurn} piece
 * @param {State} state
 */
export function markOf({ entry, earlier }, state) {
  const isUnchecked = state.view?.entries.find(({ id }) => id === entry)?.to_fill;
  if (isOldPicture(state)) return "This size is from before your last change.";
  if (isUnkept(state, entry)) return "You have an unsaved edit. This shows the saved piece.";
  if (isUnchecked) return "Not checked in the project yet: it goes by the usual sizes.";
  if (earlier) return `Cut this one from ${earlier} first: pieces are checked off in that order.`;
  return (state.view?.cuts.order === "plan" && state.view.plan?.stale) || "";
}
