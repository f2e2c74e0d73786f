import { button, element } from "../../widgets/element.js";

/** Above the entries: what is at hand, and behind one touch what is rarer. */
export function projectHead(app, { rename }) {
  const { record } = app.state.get();
  const others = button("Other projects", () => app.go("projects"));
  return [
    element(
      "div",
      { class: "button-row" },
      button("Undo", () => app.undo(), { disabled: !record?.undo.length }),
      button("Redo", () => app.redo(), { disabled: !record?.redo.length }),
      record ? button("Back up", () => app.go("backup")) : others,
    ),
    record
      ? element(
          "details",
          { class: "working" },
          element("summary", {}, "Print, rename, other projects"),
          element(
            "div",
            { class: "button-row" },
            button("Shop sheet", () => app.go("shop-sheet")),
            button("Labels", () => app.go("labels")),
            button("Rename", rename),
            others,
          ),
        )
      : null,
  ];
}
