import { button, element } from "../element.js";
import { textField } from "./text-field.js";

/** @import { FieldOptions, TextWidget } from "../widget.d.ts" */

/**
 * A text field with a key for one less and one more, for small whole numbers.
 * @param {FieldOptions<string>} options
 * @returns {TextWidget}
 */
export function countField(options) {
  const inner = textField(options);
  const step = (by) => {
    const now = /^\d{1,4}$/.test(inner.value().trim()) ? Number(inner.value()) : Number(options.field.least ?? 0);
    inner.set(String(Math.max(Number(options.field.least ?? 0), now + by)));
    options.onInput(inner.value());
  };
  const label = options.field.label;
  const row = element("div", { class: "stepper" });
  inner.input.replaceWith(row);
  row.append(
    button("−", () => step(-1), { class: "button step", "aria-label": `One less: ${label}` }),
    inner.input,
    button("+", () => step(1), { class: "button step", "aria-label": `One more: ${label}` }),
  );
  return inner;
}
