import { button, element, firstIn } from "../element.js";
import { fieldError } from "./field-error.js";

/** @import { DrawnField, FieldWidget, Form, RowsOptions, Typed, Wrong } from "../widget.d.ts" */

/** @typedef {string | Record<string, Typed>} Row what is typed into one: a text by itself, or several */

/**
 * A list of lengths, or repeated rows of fields (the layers of a molding): each row is a small
 * form of its own; rows are added and taken away with buttons. A list is rows of one field.
 * @param {RowsOptions<Row[]>} options
 * @returns {FieldWidget<Row[]>}
 */
export function manyField({ field, value, onInput, onFocus, form }) {
  const single = field.kind === "lengths";
  /** @type {DrawnField[]} */
  const rowFields = single
    ? [{ ...field, kind: "length", key: "item", label: field.row_label ?? field.label, help: null }]
    : (field.fields ?? []);
  const wrap = (/** @type {Row} */ row) => (typeof row === "string" ? { item: row } : row);
  const unwrap = (/** @type {Record<string, any>} */ typed) => (single ? (typed.item ?? "") : typed);
  const most = field.most_rows ?? Infinity;
  /** @type {{own: Form, box: HTMLElement}[]} */
  let rows = [];
  const list = element("div", { class: "rows" });
  const wrong = fieldError();
  const add = button(`Add ${(field.row_label ?? "one").toLowerCase()}`, () => {
    append({});
    tell();
    // Who adds a row goes on typing in it: the keypad goes along.
    firstIn(rows[rows.length - 1].box, "input[type=text]")?.focus();
  });
  const values = () => rows.map((row) => unwrap(row.own.values()));
  const tell = () => onInput(values());

  /** @param {Record<string, Typed>} start */
  function append(start) {
    const own = form({ fields: rowFields, values: start, onInput: tell, onFocus });
    const takeAway = button("Take away", () => remove(row), { class: "button quiet" });
    const row = { own, box: element("div", { class: "row", role: "group" }, own.node, takeAway) };
    rows.push(row);
    list.append(row.box);
    counted();
  }

  function counted() {
    rows.forEach((row, at) => {
      row.box.setAttribute("aria-label", `${field.row_label ?? field.label} ${at + 1}`);
    });
    add.hidden = rows.length >= most;
  }

  function leaveOut(row) {
    rows = rows.filter((each) => each !== row);
    row.box.remove();
    counted();
  }

  function remove(row) {
    leaveOut(row);
    tell();
    list.dispatchEvent(new Event("change", { bubbles: true }));
    add.focus();
  }

  /** Rows that are there already stay the same fields: somebody may be typing in one. */
  function set(/** @type {Row[]} */ all) {
    const wanted = (all?.length ? all : [single ? "" : {}]).map(wrap);
    for (const row of rows.slice(wanted.length)) leaveOut(row);
    rows.forEach((row, at) => {
      row.own.set(wanted[at]);
    });
    for (const each of wanted.slice(rows.length)) append(each);
  }

  set(value);
  const node = element(
    "fieldset",
    { class: "field field-many" },
    element("legend", {}, field.label),
    field.help ? element("p", { class: "help" }, field.help) : null,
    list,
    add,
    wrong.node,
  );

  /** Each row hears of its own errors; what is wrong with the whole is said below. */
  function show(/** @type {{errors: Wrong[]}} */ { errors }) {
    rows.forEach((row, at) => {
      const own = errors.filter((error) => error.row === at);
      row.own.show({ errors: own.map((error) => ({ ...error, field: single ? "item" : error.part })) });
    });
    wrong.show(errors.find((error) => error.row === undefined));
  }

  return { node, value: values, set, show };
}
