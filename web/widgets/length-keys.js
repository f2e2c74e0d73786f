import { element } from "./element.js";
import { inchStrip } from "./inch-strip.js";
import { LAYOUTS } from "./key-layouts.js";
import { keypad } from "./keypad.js";
import { writeMark } from "./typing.js";

/**
 * The keypad for a field of `kind`, with the strip of marks above it where lengths are typed.
 * @param {object} options
 * @param {string} options.kind "pad", or a kind of field
 * @param {object | null} options.strip the marks as the core sends them; null until it has
 * @param {() => HTMLInputElement} options.target the field that is written into
 * @param {Record<string, () => void>} options.acts what the keys that do not write do
 */
export function lengthKeys({ kind, strip, target, acts }) {
  if (kind in LAYOUTS) return keypad(kind, target, acts);
  let last = "";
  const marks =
    strip &&
    inchStrip(strip, (mark) => {
      last = writeMark(target(), { text: mark.text, separator: strip.separator, last });
    });
  const layout = `${kind === "pad" ? "pad" : "field"}-${strip?.unit ?? "in"}`;
  const stepping = { "‹": () => marks?.step(-1), "›": () => marks?.step(1) };
  return element("div", { class: "length-keys" }, marks?.node, keypad(layout, target, { ...stepping, ...acts }));
}
