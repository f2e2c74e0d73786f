import { isOldPicture } from "../../store/project/identity.js";
import { lastAtTheSaw } from "../../store/project/one-step.js";
import { element } from "../../widgets/element.js";
import { pieceName, piece as pieceToCut } from "../../widgets/project/piece-at-the-saw.js";
import { nothingYet } from "../forms/instead.js";
import { go } from "../go.js";
import { quietly } from "../notices.js";
import { besideTheSaw, speaker } from "./beside-the-saw.js";
import { sawKeys } from "./saw-keys.js";
import { markOf, piecesInTurn, wrongOf } from "./saw-pieces.js";
import { cutFirst, toPlanAgain } from "./saw-plan.js";
import { sawTools } from "./saw-tools.js";

/** @import { Act, Piece } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */
/** @import { PieceInTurn } from "./saw-pieces.js" */

const NONE = "No pieces yet. Solve for a piece and save it to the project; it’ll be waiting here.";

/**
 * The project's pieces one at a time, as large as the screen allows.
 * @param {App} app
 */
export function atTheSaw(app) {
  const head = element("div", { class: "saw-head" });
  const body = element("div", { class: "saw-body" });
  const keys = element("div", { class: "saw-keys" });
  const node = element("div", { class: "saw" }, head, body, keys);
  const sleeps = element("p", { class: "help" });
  const standing = besideTheSaw(app, (sentence) => sleeps.replaceChildren(sentence));
  const speak = speaker(app, draw);
  const pieces = piecesInTurn(app);
  let title = "";

  function draw() {
    const now = pieces.now();
    title = now?.piece.name ?? "";
    if (!now) {
      head.replaceChildren();
      keys.replaceChildren();
      return body.replaceChildren(nothingYet(app, NONE));
    }
    const focused = document.activeElement?.getAttribute("data-key");
    const { piece, following, isDone } = now;
    const act = (/** @type {Act} */ more) => actOn(app, piece, more, pieces.hold);
    const [wrong, mark] = [wrongOf(piece), markOf(piece, app.state.get())];
    const first = piece.left > 0 ? cutFirst(piece) : "";
    const isLast = isDone && !following && !wrong;
    const shown = { ...piece, place: piece.group, first, mark, wrong, isLast };
    head.replaceChildren(pieceName(piece));
    body.replaceChildren(pieceToCut(shown), sawTools(app, piece, act), sleeps);
    keys.replaceChildren(...sawKeys(piece, act, waysFrom(app, now, turnTo)));
    if (!isOldPicture(app.state.get())) speak(piece);
    if (focused) keepFocus(node, focused);
  }

  /** @param {PieceInTurn} piece */
  function turnTo(piece) {
    pieces.turnTo(piece);
    body.scrollTop = 0;
  }

  draw();
  return {
    node,
    title: () => title,
    refresh(/** @type {string[]} */ changed) {
      if (changed.includes("saw")) standing.light();
      if (["view", "saw"].some((key) => changed.includes(key))) draw();
    },
    leave() {
      pieces.hold();
      standing.leave();
    },
  };
}

/**
 * Where the keys lead from a piece; null where there is no such way.
 * @param {App} app
 * @param {{before?: PieceInTurn, after?: PieceInTurn, following?: PieceInTurn}} now
 * @param {(piece: PieceInTurn) => void} turnTo
 */
function waysFrom(app, { before, after, following }, turnTo) {
  const to = (/** @type {PieceInTurn | undefined} */ piece) => (piece ? () => turnTo(piece) : null);
  const undoable = lastAtTheSaw(app.state.get().record?.undo ?? []);
  const undo = undoable === null || undoable === undefined ? null : () => app.project.undoStep(undoable);
  return { back: to(before), next: to(after), following: to(following), undo, list: () => go("pieces") };
}

/**
 * @param {App} app
 * @param {Piece} piece
 * @param {Act} more
 * @param {() => void} hold
 */
function actOn(app, { entry, part }, more, hold) {
  hold();
  /** @type {Act} */
  const act = { id: entry, part, ...more };
  // Whether a piece or a blank is spoiled is to be read, not guessed.
  if (act.act === "spoil") return scrap(app, act);
  return quietly(app.project.tryChange(act));
}

/**
 * A plan has one piece too few from then on.
 * @param {App} app
 * @param {Act} act
 */
async function scrap(app, act) {
  const done = await app.project.change(act, { undoable: false });
  if (done.ok) toPlanAgain(app, done.said);
}

/**
 * The keys are drawn anew: who walks them with a keyboard stays on the same one, or the main one.
 * @param {HTMLElement} node
 * @param {string} label
 */
function keepFocus(node, label) {
  const on = [...node.querySelectorAll("button")].filter((key) => key.matches(".saw-key:enabled"));
  (on.find((key) => key.dataset.key === label) ?? on.at(-1))?.focus();
}
