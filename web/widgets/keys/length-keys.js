import { element } from "../element.js";
import { inchStrip } from "./inch-strip.js";
import { keypad } from "./keypad.js";
import { markBefore } from "./mark-before.js";

/** @import { Strip } from "../../python/contract.d.ts" */
/** @import { Keys } from "../widget.d.ts" */

/**
 * The keypad for a field of `kind`, with the strip of marks above it where lengths are typed in
 * the unit of the strip.
 * @param {object} options
 * @param {string} options.kind "pad", or a kind of field
 * @param {string} options.unit what a bare number means in it
 * @param {Strip | null} options.strip the marks as the core sends them; null until it has
 * @param {() => HTMLInputElement} options.target the field that is written into
 * @param {Record<string, () => void>} options.acts what the keys that do not write do
 * @param {() => void} [options.onMark] hears that the strip was used
 * @returns {Keys}
 */
export function lengthKeys({ kind, unit, strip, target, acts, onMark = () => {} }) {
  if (kind === "angle" || kind === "number" || kind === "count") return keypad(kind, target, acts);
  const marks = strip?.unit === unit ? inchStrip(strip, markBefore(strip, target, onMark)) : null;
  const inUnit = unit === "mm" ? "field-mm" : "field-in";
  const keys = keypad(kind === "pad" ? "pad" : inUnit, target, acts);
  return {
    node: element("div", { class: "length-keys" }, marks?.node, keys.node),
    refresh() {
      marks?.refresh();
      keys.refresh();
    },
  };
}
