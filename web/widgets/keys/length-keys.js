import { element } from "../element.js";
import { inchStrip } from "./inch-strip.js";
import { keypad } from "./keypad.js";
import { markBefore } from "./mark-before.js";

/** @import { Strip } from "../../python/contract.d.ts" */
/** @import { Keys } from "../widget.d.ts" */

/**
 * The strip of marks, where lengths are typed in its unit; null where they are not, or it isn't here yet.
 * @param {object} options
 * @param {string} options.unit what a bare number means
 * @param {Strip | null} options.strip the marks as the core sends them; null until it has
 * @param {() => HTMLInputElement} options.target the field that is written into
 * @param {() => void} [options.onMark] hears that the strip was used
 */
export const marksFor = ({ unit, strip, target, onMark = () => {} }) =>
  strip?.unit === unit ? inchStrip(strip, markBefore(strip, target, onMark)) : null;

/**
 * The keypad for a field of `kind`, with the strip of marks above it.
 * @param {object} options
 * @param {string} options.kind
 * @param {string} options.unit what a bare number means in it
 * @param {Strip | null} options.strip
 * @param {() => HTMLInputElement} options.target the field that is written into
 * @param {Record<string, () => void>} options.acts what the keys that do not write do
 * @returns {Keys}
 */
export function lengthKeys({ kind, unit, strip, target, acts }) {
  if (kind === "angle" || kind === "number" || kind === "count") return keypad(kind, target, acts);
  const marks = marksFor({ unit, strip, target });
  const keys = keypad(unit === "mm" ? "field-mm" : "field-in", target, acts);
  return {
    node: element("div", { class: "length-keys" }, marks?.node, keys.node),
    refresh() {
      marks?.refresh();
      keys.refresh();
    },
  };
}
