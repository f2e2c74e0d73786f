import { element } from "../element.js";
import { unbroken } from "./unbroken.js";

/** @import { Caution } from "../../python/contract.d.ts" */

/**
 * What can hurt or spoil the work, each in one short line that is always in sight, and opens to all of it.
 * @param {Caution[]} told
 */
export function cautions(told) {
  if (told.length === 0) return null;
  const lines = element(
    "ul",
    {},
    told.map(({ short }) => element("li", {}, unbroken(short))),
  );
  const longer = told.filter(({ short, full }) => full !== short);
  const body = longer.length ? opened(lines, longer) : lines;
  return element("aside", { class: "cautions", "aria-label": "Cautions" }, body);
}

/**
 * @param {HTMLElement} lines
 * @param {Caution[]} longer
 */
const opened = (lines, longer) => element("details", {}, element("summary", {}, lines), cautionsInFull(longer));

/** @param {Caution[]} told */
export const cautionsInFull = (told) => told.map(({ full }) => element("p", {}, unbroken(full)));
