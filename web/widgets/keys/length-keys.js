import { element } from "../element.js";
import { inchStrip } from "./inch-strip.js";
import { LAYOUTS } from "./key-layouts.js";
import { keypad } from "./keypad.js";
import { markBefore, writeMark } from "./typing.js";

/**
 * The keypad for a field of `kind`, with the strip of marks above it where lengths are typed in
 * the unit of the strip.
 * @param {object} options
 * @param {string} options.kind "pad", or a kind of field
 * @param {string} options.unit what a bare number means in it
 * @param {object | null} options.strip the marks as the core sends them; null until it has
 * @param {() => HTMLInputElement} options.target the field that is written into
 * @param {Record<string, () => void>} options.acts what the keys that do not write do
 * @returns {HTMLElement} with `refresh()`, to be called when the field says something else
 */
export function lengthKeys({ kind, unit, strip, target, acts }) {
  if (kind in LAYOUTS) return keypad(kind, target, acts);
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
  const layout = `${kind === "pad" ? "pad" : "field"}-${unit === "mm" ? "mm" : "in"}`;
  const stepping = { "‹": () => marks?.step(-1), "›": () => marks?.step(1) };
  const keys = keypad(layout, target, { ...stepping, ...acts });
  const node = element("div", { class: "length-keys" }, marks?.node, keys);
  node.refresh = () => marks?.refresh();
  return node;
}
