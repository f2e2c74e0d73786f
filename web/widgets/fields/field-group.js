import { element } from "../element.js";

/**
 * The nodes of fields in their order. Those of one `group` stand together, below a heading that
 * opens, so that what is seldom touched takes one line.
 * @param {(field: object) => Node} nodeOf
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
    if (!groups.has(label)) {
      groups.set(label, group(label, help));
      top.push(groups.get(label).node);
    }
    groups.get(label).fields.append(nodeOf(field));
  }
  return top;
}

function group(label, help) {
  const fields = element("div", { class: "form" });
  const head = [element("summary", {}, label), element("p", { class: "help" }, help)];
  return { fields, node: element("details", { class: "working field-group" }, head, fields) };
}

/** Opens the group that a node stands in, if it does: what is wrong must not be hidden. */
export const openGroupOf = (node) => node.closest(".field-group")?.setAttribute("open", "");
