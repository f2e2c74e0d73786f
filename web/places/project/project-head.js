import { button, element } from "../../widgets/element.js";
import { go } from "../go.js";

/** @import { App } from "../place.d.ts" */

/**
 * Above the entries: what the project is called, and what can be done with the whole of it.
 * @param {App} app
 * @param {{name: string, rename(): void}} project
 */
export function projectHead(app, { name, rename }) {
  const { record } = app.state.get();
  const others = button("All projects", () => go("projects"));
  const history = [
    button("Undo", () => app.project.undo(), { disabled: !record?.undo.length }),
    button("Redo", () => app.project.redo(), { disabled: !record?.redo.length }),
  ];
  const title = element("h2", { tabindex: "-1" }, name);
  if (!record) return [title, row(...history, others)];
  return [
    element("div", { class: "titled" }, title, button("Rename", rename, { class: "button quiet" })),
    row(
      ...history,
      button("Back up", () => go("backup")),
    ),
    row(
      button("Plan the cuts", () => go("plan")),
      button("Shop sheet", () => go("shop-sheet")),
      button("Labels", () => go("labels")),
      others,
    ),
  ];
}

/** @param {HTMLElement[]} buttons */
const row = (...buttons) => element("div", { class: "button-row" }, buttons);
