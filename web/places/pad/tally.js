import { lineMark } from "../../store/pad/naming.js";
import { button, element } from "../../widgets/element.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { goToLine, keptLine, neighborOf } from "../../widgets/project/kept-line.js";
import { go } from "../go.js";
import { copy, quietly } from "../notices.js";
import { keepSum } from "./keep-sum.js";

/** Every line of the tally: used again, corrected in place, named, kept, copied, deleted, undone. */
export function tally(app) {
  const node = element("div", { class: "project" });
  const lines = () => app.state.get().tally?.lines ?? [];

  function draw() {
    const { undo = [], redo = [] } = app.state.get().tally ?? {};
    node.replaceChildren(
      element("a", { class: "back", href: "#pad" }, "‹ Pad"),
      element("h2", { tabindex: "-1" }, "Tally"),
      element(
        "div",
        { class: "button-row" },
        button("Undo", () => quietly(app.tally.undo()), { disabled: undo.length === 0 }),
        button("Redo", () => quietly(app.tally.redo()), { disabled: redo.length === 0 }),
        button("Clear", clear, { disabled: lines().length === 0 }),
      ),
      lines().length
        ? element("ol", { class: "entries" }, lines().map(row))
        : element("p", { class: "help" }, "Nothing entered yet. Type a length on the Pad, then Enter."),
    );
  }

  const row = (line) =>
    keptLine(
      {
        id: line.id,
        name: line.name || `Line ${line.id}`,
        value: line.value,
        summary: line.text,
        fault: line.error ? `${line.error.message} ${line.error.remedy}` : "",
        mark: line.note,
      },
      [
        button("Use again", () => use(line)),
        button("Correct", () => correct(line)),
        button("Name", () => name(line)),
        line.value ? button("Keep in project", () => keepSum(app, { id: line.id }, { name: line.name })) : null,
        line.value?.plain ? button("Copy", () => copy(line.value.plain)) : null,
        button("Delete", () => remove(line.id)),
      ],
    );

  async function clear() {
    await quietly(app.tally.act({ act: "clear" }));
    goToLine(node, null);
  }

  async function remove(id) {
    const next = neighborOf(lines(), id);
    const answer = await quietly(app.tally.act({ act: "delete", id }));
    if (answer.ok) goToLine(node, next);
  }

  function use(line) {
    const { pad } = app.state.get();
    app.state.set({ pad: { ...pad, text: pad.text + lineMark(line), answer: null } });
    go("pad");
  }

  function correct({ id, text }) {
    app.entering.lend(text, id);
    go("pad");
  }

  const name = (line) =>
    nameDialog({
      title: `Name line ${line.id}`,
      act: "Name",
      name: line.name,
      give: (given) => app.tally.act({ act: "name", id: line.id, name: given }),
      after: () => goToLine(node, line.id),
    });

  draw();
  return { node, refresh: (changed) => changed.includes("tally") && draw() };
}
