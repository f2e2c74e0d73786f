import { element } from "../element.js";

/** @import { DrawnField } from "../widget.d.ts" */

/**
 * The nodes of fields in their order. Those of one `group` stand together, below a heading that
 * opens, so that what is seldom touched takes one line.
 * @param {DrawnField[]} fields
 * @param {(field: DrawnField) => Node} nodeOf
 */
export function grouped(fields, nodeOf) {
  const groups = new Map();
  const top = [];
  for (const field of fields) {
    if (!field.group) {
      top.push(nodeOf(field));
      continue;
    }
    const { label, help } = field.group;
    const known = groups.get(label) ?? group(label, help);
    if (!groups.has(label)) top.push(known.node);
    groups.set(label, known);
    known.fields.append(nodeOf(field));
  }
  return top;
}

function group(label, help) {
  const fields = element("div", { class: "form" });
  const head = [element("summary", {}, label), element("p", { class: "help" }, help)];
  return { fields, node: element("details", { class: "working field-group" }, head, fields) };
}

/**
 * Opens the group that a node stands in, if it does: what is wrong must not be hidden.
 * @param {HTMLElement} node
 */
export const openGroupOf = (node) => node.closest(".field-group")?.setAttribute("open", "");
