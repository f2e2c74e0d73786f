import { lineMark } from "../../store/pad/naming.js";
import { identity } from "../../store/project/identity.js";
import { element } from "../../widgets/element.js";
import { WRITES } from "../../widgets/keys/key-layouts.js";
import { keypad } from "../../widgets/keys/keypad.js";
import { marksFor } from "../../widgets/keys/length-keys.js";
import { SIGNS, write } from "../../widgets/keys/typing.js";
import { fromProject } from "../forms/from-project.js";
import { notice, quietly } from "../notices.js";
import { stripUsed } from "./pad-help.js";
import { padUnit } from "./pad-unit.js";

/** @import { Keys } from "../../widgets/widget.d.ts" */
/** @typedef {ReturnType<typeof import("./pad-entry.js").padEntry>} PadEntry */
/** @import { App } from "../place.d.ts" */

/**
 * The keys of the pad, drawn once: a thumb may be on one of them. The strip above them is another one in another unit.
 * @param {App} app
 * @param {PadEntry} entry
 */
export function padKeys(app, entry) {
  const keys = keypad("pad", entry.selectDone, actsOf(app, entry));
  const both = element("div", { class: "length-keys" }, keys.node);
  /** @type {Keys | null} */
  let marks = null;
  let drawn = "";

  function draw() {
    const asked = { unit: padUnit(app), strip: app.state.get().strip };
    if (drawn === JSON.stringify(asked)) return;
    drawn = JSON.stringify(asked);
    marks?.node.remove();
    marks = marksFor({ ...asked, target: entry.selectDone, onMark: () => stripUsed(app) });
    if (marks) both.prepend(marks.node);
  }

  function refresh() {
    marks?.refresh();
    keys.refresh();
  }

  draw();
  return { node: element("div", { class: "pad-foot" }, both), draw, refresh };
}

/**
 * What the keys do that do not only write, by their label.
 * @param {App} app
 * @param {PadEntry} entry
 * @returns {Record<string, () => void>}
 */
function actsOf(app, { input, isDone, selectDone }) {
  /**
   * A one-touch step takes what is typed, or else the last line, one step on.
   * @param {string} how
   */
  function step(how) {
    app.entering.enter();
    quietly(app.entering.step(how));
  }

  /**
   * A sign that has nothing before it goes on from the last line, which may still be on its way.
   * @param {string} label
   */
  function sign(label) {
    const { pad, tally, entering } = app.state.get();
    const last = tally?.lines.at(-1);
    if (isDone()) return write(selectDone(), (keptMark(app) ?? "") + WRITES[label]);
    const isFirst = pad.text.trim() === "" && !pad.correcting && !pad.fixing;
    const isOnItsWay = isFirst && entering.length > 0;
    if (isOnItsWay) app.state.set({ pad: { ...pad, goesOn: true } });
    const before = isFirst && !isOnItsWay && last?.value ? lineMark(last) : "";
    write(input, before + WRITES[label]);
  }

  function takeNamed() {
    const open = fromProject(app, { kind: "length" }, undefined, (name) => taken(app, name));
    if (open) open(selectDone());
    else notice("Nothing with a number is saved in this project yet.");
  }

  /** @type {Record<string, () => void>} */
  const acts = { Enter: () => app.entering.enter(), project: takeNamed };
  for (const label of SIGNS) acts[label] = () => sign(label);
  for (const how of ["again", "half", "double", "kerf"]) acts[how] = () => step(how);
  return acts;
}

/**
 * What stands for the entry kept last, by the name that it has now; nothing where that means a line.
 * @param {App} app
 */
function keptMark(app) {
  const { pad, view, record } = app.state.get();
  const { kept } = pad;
  const entry = kept?.of === identity(record) ? view?.entries.find(({ id }) => id === kept?.id) : undefined;
  return entry && !app.tally.lineCalled(entry.name) ? entry.insert : undefined;
}

/**
 * Why a name of the project can't be used here: a line is called so, and is nearer.
 * @param {App} app
 * @param {string} name
 */
function taken(app, name) {
  const line = app.tally.lineCalled(name);
  if (!line) return "";
  const remedy = "Rename one of them to use the project’s number.";
  return `Line ${line.id} in the history is named ${name} too, so the pad would use that one. ${remedy}`;
}
