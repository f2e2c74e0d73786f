import { button, element } from "../../widgets/element.js";
import { go } from "../go.js";

/** @import { App } from "../place.d.ts" */

/**
 * Above the entries: what is at hand, and behind one touch what is rarer.
 * @param {App} app
 * @param {{rename(): void}} acts
 */
export function projectHead(app, { rename }) {
  const { record } = app.state.get();
  const others = button("All projects", () => go("projects"));
  return [
    element(
      "div",
      { class: "button-row" },
      button("Undo", () => app.project.undo(), { disabled: !record?.undo.length }),
      button("Redo", () => app.project.redo(), { disabled: !record?.redo.length }),
      record ? button("Back up", () => go("backup")) : others,
    ),
    record
      ? element(
          "details",
          { class: "working" },
          element("summary", {}, "Print, rename, all projects"),
          element(
            "div",
            { class: "button-row" },
            button("Shop sheet", () => go("shop-sheet")),
            button("Labels", () => go("labels")),
            button("Rename", rename),
            others,
          ),
        )
      : null,
  ];
}
