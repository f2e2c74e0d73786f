import { element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";
import { presently } from "./present-value.js";

/** @import { DrawnField, Typed } from "../widget.d.ts" */

/**
 * @typedef {object} Fold a row that says what its fields are now, and opens in place
 * @property {HTMLDetailsElement} node
 * @property {DrawnField[]} fields
 * @property {(shown: DrawnField[], values: Record<string, Typed>) => void} draw
 */

const MORE = "More";

/**
 * The nodes of fields in their order. Those of one `group` fold behind a row of its name; those that the plain case does
 * not need behind the last one.
 * @param {DrawnField[]} fields
 * @param {(field: DrawnField) => Node} nodeOf
 */
export function folded(fields, nodeOf) {
  const more = fields.filter((field) => field.basic === false && !field.group);
  /** @type {Map<string, Fold>} */
  const folds = new Map();
  const top = [];
  for (const field of fields) {
    if (!field.group) {
      if (more.length < 2 || !more.includes(field)) top.push(nodeOf(field));
      continue;
    }
    const { label, help } = field.group;
    const known = folds.get(label) ?? fold(label, help);
    if (!folds.has(label)) top.push(known.node);
    folds.set(label, known);
    put(known, field, nodeOf);
  }
  if (more.length > 1) {
    const rest = fold(MORE);
    for (const field of more) put(rest, field, nodeOf);
    folds.set(MORE, rest);
    top.push(rest.node);
  }
  return { nodes: top, folds: [...folds.values()] };
}

/**
 * @param {Fold} into
 * @param {DrawnField} field
 * @param {(field: DrawnField) => Node} nodeOf
 */
function put(into, field, nodeOf) {
  into.fields.push(field);
  into.node.append(nodeOf(field));
}

/**
 * @param {string} label
 * @param {string} [help]
 * @returns {Fold}
 */
function fold(label, help) {
  const now = element("span", { class: "fold-now" });
  const head = element("summary", { class: "fold-row" }, element("span", { class: "fold-name" }, label), " ", now);
  const node = element(
    "details",
    { class: "fold" },
    head,
    help ? element("p", { class: "help fold-help" }, help) : null,
  );
  /** @type {DrawnField[]} */
  const fields = [];
  return {
    node,
    fields,
    draw(shown, values) {
      node.hidden = shown.length === 0;
      now.textContent = unbroken(presently(shown, values));
    },
  };
}
