import { button, element } from "../element.js";
import { textField } from "./text-field.js";

/** @import { FieldOptions, TextWidget } from "../widget.d.ts" */

/** This minute by the clock on the wall, as the browser's own field has it: 2026-11-30T18:00. */
const now = () => new Date().toLocaleString("sv", { dateStyle: "short", timeStyle: "short" }).replace(" ", "T");

/**
 * A date with a time, picked with the device's own picker, and a key for the present moment.
 * @param {FieldOptions<string>} options
 * @returns {TextWidget}
 */
export function momentField(options) {
  const inner = textField(options);
  const row = element("div", { class: "moment" });
  inner.input.replaceWith(row);

  function take() {
    inner.set(now());
    options.onInput(inner.value());
    // Who leaves the field by this key has changed it, as by hand.
    inner.input.dispatchEvent(new Event("change", { bubbles: true }));
  }

  row.append(
    inner.input,
    button("Now", take, { class: "button moment-now", "aria-label": `Now: ${options.field.label}` }),
  );
  return inner;
}
