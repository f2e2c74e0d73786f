import { element } from "../element.js";
import { partSize } from "./part-size.js";
import { unbroken } from "./unbroken.js";

/** @import { Part } from "../../python/contract.d.ts" */

/**
 * The parts of an answer that says more of them than their sizes, each with its lines; null without any.
 * @param {Part[]} parts
 */
export function partsList(parts) {
  if (!parts.some(({ about }) => about)) return null;
  return element("ul", { class: "parts" }, parts.map(item));
}

/** @param {Part} part */
const item = ({ key, count, name, about = [], ...part }) =>
  element("li", { "data-part": key, tabindex: "-1" }, ...more(about, [`${count} × ${name}`, partSize(part)]));

/**
 * Its name and size, which open to how it is made.
 * @param {readonly string[]} about
 * @param {[string, string]} told
 */
function more(about, [name, size]) {
  const head = [element("p", { class: "part-name" }, name), element("p", { class: "part-size" }, size)];
  const lines = about.map((line) => element("p", { class: "part-about" }, unbroken(line)));
  return lines.length ? [element("details", {}, element("summary", {}, head), lines)] : head;
}

/**
 * Unfolds the row of a part in what holds such a list, and goes to it.
 * @param {HTMLElement} node
 * @param {string} key
 */
export function goToPart(node, key) {
  const rows = [...node.querySelectorAll(".parts > li")].filter((each) => each instanceof HTMLElement);
  for (const each of rows) each.classList.toggle("touched", each.dataset.part === key);
  const row = rows.find((each) => each.dataset.part === key);
  if (!row) return;
  for (const fold of row.querySelectorAll("details")) fold.open = true;
  for (let fold = row.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null) fold.open = true;
  row.focus({ preventScroll: true });
  row.scrollIntoView({ block: "start" });
}
