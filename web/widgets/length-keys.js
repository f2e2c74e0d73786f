import { element } from "./element.js";
import { inchStrip } from "./inch-strip.js";
import { keypad } from "./keypad.js";
import { writeMark } from "./typing.js";

/**
 * The keypad for a field of `kind`, with the strip of marks above it where lengths are typed.
 * @param {object | null} strip the marks as the core sends them; null until it has
 */
export function lengthKeys(kind, strip, target) {
  if (kind === "angle" || kind === "count") return keypad(kind, target);
  let last = "";
  const marks = strip && inchStrip(strip, (mark) => (last = writeMark(target(), { text: mark.text, separator: strip.separator, last })));
  return element(
    "div",
    { class: "length-keys" },
    marks?.node,
    keypad(strip?.unit === "mm" ? "metric" : "inch", target, (by) => marks?.step(by)),
  );
}
