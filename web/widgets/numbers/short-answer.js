import { element, present } from "../element.js";
import { fraction } from "./fraction.js";
import { tape } from "./tape.js";
import { unbroken } from "./unbroken.js";

/** @import { Read } from "../../python/contract.d.ts" */
/** @import { Shown } from "../widget.d.ts" */

/**
 * The answer of the pad: the number, what was rounded away with the sixty-fourth that is nearer, the other unit system
 * and the decimals, and an inch of tape with how to find it there.
 * @param {Pick<Read, "tape" | "finer"> & {value: Shown}} read
 */
export const shortAnswer = ({ value, tape: drawn, finer }) =>
  element(
    "div",
    { class: "main-answer" },
    fraction(value, "fraction-huge"),
    element("p", { class: "small-print" }, smallPrint(value, finer)),
    drawn ? [tape(drawn, 0.5), element("p", { class: "tape-words" }, unbroken(drawn.words))] : null,
  );

/**
 * @param {Shown} value
 * @param {string} finer
 */
function smallPrint(value, finer) {
  const dropped = value.kind === "length" ? value.dropped_text || "exact" : value.dropped_text;
  const told = [dropped, finer, value.other, value.decimals].map((text) => text || null);
  return present(told).map((text) => element("span", { class: "aside" }, unbroken(text)));
}
