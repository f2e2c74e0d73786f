import { element } from "../element.js";
import { inchStrip } from "./inch-strip.js";
import { keypad } from "./keypad.js";
import { markBefore, writeMark } from "./typing.js";

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
 * @returns {Keys}
 */
export function lengthKeys({ kind, unit, strip, target, acts }) {
  if (kind === "angle" || kind === "number" || kind === "count") {
    return { node: keypad(kind, target, acts), refresh() {} };
  }
  let last = "";
  const marks =
    strip?.unit === unit
      ? inchStrip(strip, {
          standing: () => markBefore(target(), last).trim(),
          onPick: (mark) => {
            last = writeMark(target(), { text: mark.text ?? "", separator: strip.separator, last });
          },
        })
      : null;
  /** @type {"pad-mm" | "pad-in" | "field-mm" | "field-in"} */
  const layout = `${kind === "pad" ? "pad" : "field"}-${unit === "mm" ? "mm" : "in"}`;
  const stepping = { "‹": () => marks?.step(-1), "›": () => marks?.step(1) };
  const keys = keypad(layout, target, { ...stepping, ...acts });
  const node = element("div", { class: "length-keys" }, marks?.node, keys);
  return { node, refresh: () => marks?.refresh() };
}
