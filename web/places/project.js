import { button, element } from "../widgets/element.js";
import { fraction } from "../widgets/fraction.js";
import { nameDialog } from "../widgets/name-dialog.js";

/** What is kept: readings and worked lines, renamed, reopened, corrected, deleted with undo. */
export function project(app) {
  const node = element("div", { class: "project" });

  function draw() {
    const { view, record } = app.state.get();
    const entries = view?.entries ?? [];
    node.replaceChildren(
      element("h2", {}, view?.name ?? "My project"),
      element(
        "div",
        { class: "button-row" },
        button("Undo", () => app.undo(), { disabled: !record?.undo.length }),
        button("Redo", () => app.redo(), { disabled: !record?.redo.length }),
        record ? button("Rename", renameProject) : null,
        button("Other projects", () => app.go("projects")),
      ),
      entries.length
        ? element("ul", { class: "entries" }, entries.map(row))
        : element("p", { class: "help" }, "Nothing kept yet. Keep a reading from the Pad, or an answer from Work out."),
    );
  }

  const row = (entry) =>
    element(
      "li",
      { class: "entry" },
      element(
        "details",
        {},
        element(
          "summary",
          {},
          element("span", { class: "entry-name" }, entry.name),
          entry.headline
            ? fraction(entry.headline, "fraction-large")
            : element("span", { class: "trouble" }, entry.error?.message ?? ""),
          element("span", { class: "entry-summary" }, `${entry.title}: ${entry.summary}`),
        ),
        element(
          "div",
          { class: "button-row" },
          entry.kind === "line" ? button("Open", () => open(entry.id)) : button("Correct", () => correct(entry)),
          button("Rename", () => rename(entry)),
          button("Delete", () => app.change({ act: "delete", id: entry.id }, { undoable: true })),
        ),
      ),
    );

  function open(id) {
    const { reckoner } = app.state.get().record.document.entries.find((each) => each.id === id);
    app.go(`work-out/${reckoner}/${id}`);
  }

  const correct = (entry) => app.go(`reading/${entry.id}`);

  const rename = (entry) =>
    nameDialog({
      title: `Rename ${entry.name}`,
      act: "Rename",
      name: entry.name,
      give: (name) => app.change({ act: "rename", id: entry.id, name }),
    });

  const renameProject = () =>
    nameDialog({
      title: "Rename the project",
      act: "Rename",
      name: app.state.get().view?.name ?? "",
      give: (name) => app.change({ act: "rename_project", name }),
    });

  draw();
  node.refresh = (changed) => (changed.includes("view") || changed.includes("record")) && draw();
  return node;
}
