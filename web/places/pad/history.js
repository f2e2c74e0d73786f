import { lineMark } from "../../store/pad/naming.js";
import { button, element } from "../../widgets/element.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { goToLine, keptLine, neighborOf } from "../../widgets/project/kept-line.js";
import { go } from "../go.js";
import { copy, inWords, quietly } from "../notices.js";
import { keepSum } from "./keep-sum.js";
import { begunIn } from "./pad-unit.js";

/** @import { TallyLineTold } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * Every line of the tally: used again, corrected in place, named, kept, copied, deleted, undone.
 * @param {App} app
 */
export function tally(app) {
  const node = element("div", { class: "project" });

  function draw() {
    const { lines = [], undo = [], redo = [] } = app.state.get().tally ?? {};
    node.replaceChildren(
      element("a", { class: "back", href: "#pad" }, "‹ Pad"),
      element("h2", { tabindex: "-1" }, "History"),
      element(
        "div",
        { class: "button-row" },
        button("Undo", () => quietly(app.tally.undo()), { disabled: undo.length === 0 }),
        button("Redo", () => quietly(app.tally.redo()), { disabled: redo.length === 0 }),
        button("Clear", clear, { disabled: lines.length === 0 }),
      ),
      lines.length
        ? element(
            "ol",
            { class: "entries" },
            lines.map((line) => row(line, lineActs(app, node, line))),
          )
        : element("p", { class: "help" }, "Nothing here yet. Type a length on the Pad and press Enter."),
    );
  }

  async function clear() {
    await quietly(app.tally.act({ act: "clear" }));
    goToLine(node);
  }

  draw();
  return { node, title: () => "History", refresh: (changed) => changed.includes("tally") && draw() };
}

/**
 * @param {TallyLineTold} line
 * @param {(HTMLElement | null)[]} acts
 */
const row = (line, acts) =>
  keptLine(
    {
      id: line.id,
      name: line.name || `Line ${line.id}`,
      value: line.value,
      summary: line.text,
      fault: line.error ? inWords(line.error) : "",
      mark: line.note,
    },
    acts,
  );

/**
 * What can be done with a line; `list` is where its row stands.
 * @param {App} app
 * @param {HTMLElement} list
 * @param {TallyLineTold} line
 */
function lineActs(app, list, line) {
  const { id, name, text, value } = line;

  function use() {
    const { pad } = app.state.get();
    app.state.set({ pad: { ...pad, text: pad.text + lineMark(line), answer: null, unit: begunIn(app, pad) } });
    go("pad");
  }

  function correct() {
    app.entering.lend(text, id);
    go("pad");
  }

  const rename = () =>
    nameDialog({
      title: `Name line ${id}`,
      act: "Name",
      name,
      give: (given) => app.tally.act({ act: "name", id, name: given }),
      after: () => goToLine(list, id),
    });

  async function remove() {
    const next = neighborOf(app.state.get().tally?.lines ?? [], id);
    const answer = await quietly(app.tally.act({ act: "delete", id }));
    if (answer.ok) goToLine(list, next);
  }

  return [
    button("Use again", use),
    button("Edit", correct),
    button("Name", rename),
    value ? button("Save to project", () => keepSum(app, { id }, { name })) : null,
    value && "plain" in value ? button("Copy", () => copy(value.plain)) : null,
    button("Delete", remove),
  ];
}
