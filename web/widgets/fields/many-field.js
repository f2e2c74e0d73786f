import { button, element, firstIn } from "../element.js";
import { fieldError } from "./field-error.js";

/** @import { DrawnField, FieldWidget, Form, RowsOptions, Typed, Wrong } from "../widget.d.ts" */

/** @typedef {string | Record<string, Typed>} Row what is typed into one: a text by itself, or several */

/** The one field of a row of a list. */
const ITEM = "item";

/**
 * A list of lengths, or repeated rows of fields (the layers of a molding): each row is a small
 * form of its own; rows are added and taken away with buttons. A list is rows of one field.
 * @param {RowsOptions<Row[]>} options
 * @returns {FieldWidget<Row[]>}
 */
export function manyField({ field, value, onInput, onFocus, form }) {
  const { fields, wrap, unwrap, placeOf } = rowsOf(field);
  const wrong = fieldError();
  const add = button(`Add ${(field.row_label ?? "one").toLowerCase()}`, added);
  const rows = rowList({
    label: field.row_label ?? field.label,
    draw: (start) => form({ fields, values: start, onInput: tell, onFocus }),
    onCount: (count) => {
      add.hidden = count >= (field.most_rows ?? Infinity);
    },
    onTakenAway() {
      tell();
      rows.node.dispatchEvent(new Event("change", { bubbles: true }));
      add.focus();
    },
  });
  const values = () => rows.all().map((row) => unwrap(row.values()));
  const tell = () => onInput(values());

  /** Who adds a row goes on typing in it: the keypad goes along. */
  function added() {
    const row = rows.append({});
    tell();
    firstIn(row.node, "input[type=text]")?.focus();
  }

  /** @param {Row[]} typed */
  const set = (typed) => rows.set((typed?.length ? typed : [unwrap({})]).map(wrap));

  /**
   * Each row hears of its own errors; what is wrong with the whole is said below.
   * @param {{errors?: Wrong[]}} told
   */
  function show({ errors = [] }) {
    rows.all().forEach((row, at) => {
      const own = errors.filter((error) => error.row === at);
      row.show({ errors: own.map((error) => ({ ...error, field: placeOf(error) })) });
    });
    wrong.show(errors.find((error) => error.row === undefined));
  }

  set(value);
  const legend = element("legend", {}, field.label);
  const help = field.help ? element("p", { class: "help" }, field.help) : null;
  const node = element("fieldset", { class: "field field-many" }, legend, help, rows.node, add, wrong.node);
  return { node, value: values, set, show };
}

/**
 * How rows are drawn as forms: of which fields, how what is typed into one becomes the values of its form and back, and
 * which field an error of a row is about. A row is `any`: a draft of an older version may hold anything.
 * @param {DrawnField} field
 */
function rowsOf(field) {
  if (field.kind !== "lengths")
    return {
      fields: field.fields ?? [],
      wrap: (/** @type {any} */ row) => row,
      unwrap: (/** @type {Record<string, any>} */ typed) => typed,
      placeOf: (/** @type {Wrong} */ { part }) => part,
    };
  /** @type {DrawnField} */
  const item = { ...field, kind: "length", key: ITEM, label: field.row_label ?? field.label, help: null };
  return {
    fields: [item],
    wrap: (/** @type {any} */ text) => ({ [ITEM]: text }),
    unwrap: (/** @type {Record<string, any>} */ typed) => typed[ITEM] ?? "",
    placeOf: () => ITEM,
  };
}

/**
 * Forms one below the other, each with a button that takes it away.
 * @param {object} options
 * @param {string} options.label what a row is called
 * @param {(start: Record<string, Typed>) => Form} options.draw
 * @param {(count: number) => void} options.onCount
 * @param {() => void} options.onTakenAway
 */
function rowList({ label, draw, onCount, onTakenAway }) {
  const node = element("div", { class: "rows" });
  /** @type {(Form & {box: HTMLElement, away: HTMLElement})[]} */
  let rows = [];

  /** @param {Record<string, Typed>} start */
  function append(start) {
    const form = draw(start);
    const away = button("Remove", () => remove(row), { class: "button quiet" });
    const row = { ...form, away, box: element("div", { class: "row", role: "group" }, form.node, away) };
    rows.push(row);
    node.append(row.box);
    counted();
    return row;
  }

  function counted() {
    rows.forEach(({ box, away }, at) => {
      box.setAttribute("aria-label", `${label} ${at + 1}`);
      away.setAttribute("aria-label", `Remove ${label.toLowerCase()} ${at + 1}`);
    });
    onCount(rows.length);
  }

  function leaveOut(row) {
    rows = rows.filter((each) => each !== row);
    row.box.remove();
    counted();
  }

  function remove(row) {
    leaveOut(row);
    onTakenAway();
  }

  /**
   * Rows that are there already stay the same fields: somebody may be typing in one.
   * @param {Record<string, Typed>[]} wanted
   */
  function set(wanted) {
    for (const row of rows.slice(wanted.length)) leaveOut(row);
    rows.forEach((row, at) => {
      row.set(wanted[at]);
    });
    for (const start of wanted.slice(rows.length)) append(start);
  }

  return { node, all: () => rows, append, set };
}
