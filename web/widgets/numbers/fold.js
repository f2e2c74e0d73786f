import { element } from "../element.js";

/** @import { Child, Children } from "../widget.d.ts" */

/**
 * One line that says what is in it, and opens.
 * @param {Child} line
 * @param {Children} inside
 */
export const fold = (line, inside) =>
  element("details", { class: "working" }, element("summary", {}, line), inside ?? null);
