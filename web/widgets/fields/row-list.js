import { button, element } from "../element.js";

/** @import { Form, Typed } from "../widget.d.ts" */

/** @typedef {Form & {box: HTMLElement, away: HTMLElement, began: string}} Row */

/**
 * What is typed into a row, in one order; blank fields don't count.
 * @param {Record<string, Typed>} values
 */
const typedIn = (values) =>
  JSON.stringify(
    Object.entries(values)
      .filter(([, value]) => value !== "")
      .sort(),
  );

/**
 * Forms one below the other, each with a button that takes it away.
 * @param {object} options
 * @param {string} options.label what a row is called
 * @param {boolean} options.isLine whether a row is one field, and takes one line
 * @param {number} options.least rows that stay
 * @param {(start: Record<string, Typed>) => Form} options.draw
 * @param {(count: number) => void} options.onCount
 * @param {() => void} options.onTakenAway
 */
export function rowList({ label, isLine, least, draw, onCount, onTakenAway }) {
  const node = element("div", { class: "rows" });
  /** @type {Row[]} */
  let rows = [];

  /** @param {Record<string, Typed>} start */
  function append(start) {
    const form = draw(start);
    const away = button("✕", () => remove(row), { class: "button quiet row-away" });
    const title = isLine ? null : element("p", { class: "row-title", "aria-hidden": "true" }, label);
    const parts = isLine ? [form.node, away] : [element("div", { class: "row-head" }, title, away), form.node];
    const box = element("div", { class: `row ${isLine ? "row-line" : ""}`, role: "group" }, parts);
    /** @type {Row} */
    const row = { ...form, away, box, began: typedIn(form.values()) };
    rows.push(row);
    node.append(box);
    counted();
    return row;
  }

  function counted() {
    rows.forEach(({ box, away }, at) => {
      box.setAttribute("aria-label", `${label} ${at + 1}`);
      away.setAttribute("aria-label", `Remove ${label.toLowerCase()} ${at + 1}`);
      away.hidden = rows.length <= least;
    });
    onCount(rows.length);
  }

  /** @param {Row} row */
  function leaveOut(row) {
    rows = rows.filter((each) => each !== row);
    row.box.remove();
    counted();
  }

  /** @param {Row} row */
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

  return {
    node,
    all: () => rows,
    append,
    leaveOut,
    set,
    isUntouched: (/** @type {Row} */ row) => typedIn(row.values()) === row.began,
  };
}
