import { element } from "../element.js";

/** @import { Child } from "../widget.d.ts" */

/**
 * Rows under a heading that folds them away.
 * @param {object} group
 * @param {string} group.key
 * @param {string} group.title
 * @param {boolean} group.isOpen
 * @param {(isOpen: boolean) => void} group.onFold called when a person folds or opens it
 * @param {Child[]} rows
 */
export function folded({ key, title, isOpen, onFold }, rows) {
  const node = element(
    "details",
    { class: "group", open: isOpen, "data-group": key },
    element("summary", {}, element("h3", {}, title), element("span", { class: "group-count" }, String(rows.length))),
    element("ul", { class: "entries" }, rows),
  );
  let was = isOpen;
  node.addEventListener("toggle", () => {
    if (node.open === was) return;
    was = node.open;
    onFold(was);
  });
  return node;
}
