import { element } from "../../widgets/element.js";
import { pieceLine } from "../../widgets/project/piece-line.js";
import { nothingYet } from "../forms/instead.js";
import { go } from "../go.js";
import { besideTheSaw } from "./beside-the-saw.js";
import { inOrder, wrongOf } from "./saw-pieces.js";

/** @import { App } from "../place.d.ts" */
/** @import { PieceInTurn } from "./saw-pieces.js" */

const TITLE = "All pieces";

/**
 * All pieces of the project by what they are cut of, in the order of the cuts, each with what is done of it; a touch
 * goes to it at the saw.
 * @param {App} app
 */
export function allPieces(app) {
  const list = element("div", { class: "piece-list" });
  const standing = besideTheSaw(app, () => {});

  /** @param {PieceInTurn} piece */
  function turnTo(piece) {
    app.state.set({ saw: { ...app.state.get().saw, piece: piece.spot } });
    go("saw");
  }

  function draw() {
    const { view, saw } = app.state.get();
    const pieces = view?.set_ups ? inOrder(view) : [];
    const stocks = new Set(pieces.map(({ stock }) => stock));
    const line = (/** @type {PieceInTurn} */ piece) =>
      pieceLine({ ...piece, wrong: wrongOf(piece), isShown: piece.spot === saw.piece }, () => turnTo(piece));
    const drawn = [...stocks].map((stock) => [
      element("h3", {}, stock),
      element("ul", { class: "entries" }, pieces.filter((each) => each.stock === stock).map(line)),
    ]);
    list.replaceChildren(...(drawn.length ? drawn.flat() : [nothingYet(app, "No pieces yet.")]));
  }

  draw();
  const back = element("a", { class: "back", href: "#saw" }, "‹ At the saw");
  return {
    node: element("div", { class: "project" }, back, element("h2", {}, TITLE), list),
    title: () => TITLE,
    refresh: (/** @type {string[]} */ changed) => changed.includes("view") && draw(),
    leave: standing.leave,
  };
}
