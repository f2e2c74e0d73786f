import { element, present } from "../element.js";

/** @import { Child } from "../widget.d.ts" */

/**
 * A field as a row: what is asked at its left, what is answered at its right; below stands what is said of it, in lines
 * that are only there where they say something.
 * @param {{look?: string, row: Child[], under: Child[], attributes?: Record<string, unknown>}} parts
 */
export function fieldRow({ look = "", row, under, attributes = {} }) {
  const line = element("div", { class: "field-row" }, row);
  return { line, node: element("div", { class: `field ${look}`, ...attributes }, line, present(under)) };
}
