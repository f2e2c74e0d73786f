import { latest } from "../../store/page/latest.js";
import { element } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { sheetsOfPaper } from "../../widgets/pictures/sheet-of-paper.js";
import { arriving } from "../forms/instead.js";
import { inUnit } from "../forms/units.js";
import { inWords } from "../notices.js";
import { labelGrid } from "./label-grid.js";
import { paperChoice, paperOf, printButton } from "./printing.js";

/** @import { Answered, Field, Labeled } from "../../python/contract.d.ts" */
/** @import { Wrong } from "../../widgets/widget.d.ts" */
/** @import { App, Place } from "../place.d.ts" */

const TITLE = "Piece labels";
/** @type {{ok: false, error: Wrong, more?: undefined}} */
const NO_PROJECT = { ok: false, error: { message: "There’s no project yet.", remedy: "Save a piece first." } };

/**
 * Labels for the project's pieces, on the person's own sheet of stickers.
 * @param {App} app
 * @returns {Place}
 */
export function labels(app) {
  const declared = app.state.get().described?.labels ?? [];
  if (declared.length === 0) return arriving("Loading the labels…", () => labels(app));
  const ask = latest(app.ask);
  const status = element("p", { class: "help", role: "status" });
  const sheets = element("div", { class: "printable" });
  const print = printButton();
  const grid = labelGrid(app, declared);
  const fields = form({
    fields: declared,
    values: { ...startsIn(declared, grid.unit), ...grid.values },
    onInput(values) {
      grid.type(values);
      draw();
    },
    onFocus: (input, { kind }) => app.sheet.open(input, { kind, unit: grid.unit, peek: () => ({ lines: [] }) }),
  });

  function draw() {
    const { record } = app.state.get();
    if (!record) return show(NO_PROJECT);
    const { document } = record;
    ask({ do: "labels", document, paper: paperOf(app), values: fields.values(), unit: grid.unit }, show);
  }

  /** @param {Answered<Labeled> | typeof NO_PROJECT} answer */
  function show(answer) {
    const errors = answer.ok ? [] : [answer.error, ...(answer.more ?? [])];
    fields.show({ errors });
    status.textContent = answer.ok ? answer.said : elsewhere(errors, declared);
    print.disabled = !answer.ok;
    if (answer.ok) sheets.replaceChildren(sheetsOfPaper(answer.sheets, answer.paper));
  }

  /** @param {string[]} changed */
  function refresh(changed) {
    if (!changed.includes("view")) return;
    const others = grid.changed(fields.values());
    if (others) fields.set(others);
    draw();
  }

  print.addEventListener("click", () => grid.keep(fields.values()));
  draw();
  const typed = element("div", { onfocusout: grid.keepTyped }, fields.node);
  const head = [...heading(), paperChoice(app, draw), typed, status, print];
  const node = element("div", { class: "paper" }, element("div", { class: "on-screen" }, head), sheets);
  return { node, title: () => TITLE, refresh, leave: grid.keepTyped };
}

/**
 * What each field of a grid starts with, in inches or in millimeters.
 * @param {Field[]} fields
 * @param {string} unit
 */
const startsIn = (fields, unit) =>
  Object.fromEntries(fields.map((field) => [field.key, inUnit(field, "default", unit) ?? ""]));

const heading = () => [
  element("a", { class: "back", href: "#project" }, "‹ Project"),
  element("h2", {}, TITLE),
  element("p", { class: "help" }, "Measure your label sheet, then test-print on plain paper."),
];

/**
 * What is said of no field of the grid, which has no place beside one.
 * @param {Wrong[]} errors
 * @param {{key: string}[]} fields
 */
const elsewhere = (errors, fields) =>
  errors
    .filter((error) => !fields.some(({ key }) => key === error.field))
    .map(inWords)
    .join(" ");
