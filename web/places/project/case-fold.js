import { element } from "../../widgets/element.js";
import { caseDrawing } from "../../widgets/project/case-drawing.js";
import { placeOf } from "../forms/to-fill.js";
import { go, inLine } from "../go.js";

/** @import { Case } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @typedef {{isOpen: boolean, view: string, part: string}} Shown */

/** What was looked at last of each case, by its project and line, while the app is open. @type {Map<string, Shown>} */
const lookedAt = new Map();

/**
 * The drawing of each case of the project, behind a line that opens it; it is drawn when it is first open.
 * @param {App} app
 */
export function caseFolds(app) {
  const { view } = app.state.get();
  const cases = view?.cases ?? [];
  return cases.map((told) => fold(app, told, cases.length === 1 ? "Drawing of the case" : `Drawing of ${told.name}`));
}

/**
 * @param {App} app
 * @param {Case} told
 * @param {string} title
 */
function fold(app, told, title) {
  const { view, record } = app.state.get();
  const key = `${record?.id}/${told.entry}`;
  const shown = lookedAt.get(key) ?? { isOpen: false, view: "front", part: "" };
  lookedAt.set(key, shown);
  const inside = element("div");
  const draw = () =>
    inside.replaceChildren(
      caseDrawing(told, { pieces: view?.pieces ?? [], shown, open: ({ entry, part }) => openLine(app, entry, part) }),
    );
  const node = element(
    "details",
    { class: "group case-fold", open: shown.isOpen },
    element("summary", {}, element("h3", {}, title)),
    inside,
  );
  node.addEventListener("toggle", () => {
    shown.isOpen = node.open;
    if (node.open && !inside.firstChild) draw();
  });
  return node;
}

/**
 * Goes to the row of a part in its question.
 * @param {App} app
 * @param {string} id
 * @param {string} part
 */
function openLine(app, id, part) {
  go(inLine(placeOf(app.state.get(), { id, kind: "line" }), part));
}
