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
const item = ({ count, name, about = [], ...part }) =>
  element(
    "li",
    {},
    element("p", { class: "part-name" }, `${count} × ${name}`),
    element("p", { class: "part-size" }, partSize(part)),
    ...about.map((line) => element("p", { class: "part-about" }, unbroken(line))),
  );
