import { button, element } from "../widgets/element.js";
import { fraction } from "../widgets/fraction.js";
import { nameDialog } from "../widgets/name-dialog.js";
import { lineMark } from "../widgets/tally-lines.js";

/** Every line of the tally: used again, corrected in place, named, kept, copied, deleted, undone. */
export function tally(app) {
  const node = element("div", { class: "project" });

  function draw() {
    const { lines = [], undo = [], redo = [] } = app.state.get().tally ?? {};
    node.replaceChildren(
      element("a", { class: "back", href: "#pad" }, "‹ Pad"),
      element("h2", {}, "Tally"),
      element(
        "div",
        { class: "button-row" },
        button("Undo", () => app.tellTally(app.tally.undo()), { disabled: undo.length === 0 }),
        button("Redo", () => app.tellTally(app.tally.redo()), { disabled: redo.length === 0 }),
        button("Clear", () => app.tellTally(app.tally.act({ act: "clear" })), { disabled: lines.length === 0 }),
      ),
      lines.length
        ? element("ol", { class: "entries" }, lines.map(row))
        : element("p", { class: "help" }, "Nothing entered yet. Type a length on the Pad, then Enter."),
    );
  }

  const row = (line) =>
    element(
      "li",
      { class: "entry" },
      element(
        "details",
        {},
        element(
          "summary",
          {},
          element("span", { class: "entry-name" }, line.name || `Line ${line.id}`),
          line.value ? fraction(line.value, "fraction-large") : null,
          element("span", { class: "entry-summary" }, line.text),
          line.error
            ? element("span", { class: "entry-summary trouble" }, `${line.error.message} ${line.error.remedy}`)
            : null,
        ),
        element(
          "div",
          { class: "button-row" },
          button("Use again", () => use(line)),
          button("Correct", () => correct(line)),
          button("Name", () => name(line)),
          line.value?.exact_plain ? button("Keep in project", () => keep(line)) : null,
          line.value?.plain ? button("Copy", () => app.copy(line.value.plain)) : null,
          button("Delete", () => app.tellTally(app.tally.act({ act: "delete", id: line.id }))),
        ),
      ),
    );

  function use(line) {
    const { text } = app.state.get().pad;
    app.state.set({ pad: { ...app.state.get().pad, text: text + lineMark(line) } });
    app.go("pad");
  }

  function correct({ id, text }) {
    app.state.set({ pad: { text, answer: null, correcting: id } });
    app.go("pad");
  }

  const name = (line) =>
    nameDialog({
      title: `Name line ${line.id}`,
      act: "Name",
      name: line.name,
      give: (given) => app.tally.act({ act: "name", id: line.id, name: given }),
    });

  const keep = (line) =>
    nameDialog({
      title: `Keep ${line.value.text}`,
      act: "Keep",
      name: line.name,
      give: (given) => app.change({ act: "keep_reading", name: given, text: line.value.exact_plain }),
    });

  draw();
  node.refresh = (changed) => changed.includes("tally") && draw();
  return node;
}
