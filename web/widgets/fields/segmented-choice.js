import { element, freshId } from "../element.js";
import { fieldError } from "./field-error.js";
import { fieldRow } from "./field-row.js";
import { helpLine, helpOnFocus } from "./help-on-focus.js";

/** @import { ChoiceOptions, FieldWidget } from "../widget.d.ts" */

/**
 * One of a few, side by side in its row; the one chosen has a mark.
 * @param {ChoiceOptions} options
 * @returns {FieldWidget<string>}
 */
export function segmentedChoice({ field, value, onInput }) {
  const name = freshId(field.key);
  const { choices = [] } = field;
  const wrong = fieldError(`${name}-error`);
  const help = helpLine(field.help, `${name}-help`);
  const label = element("span", { class: "field-label", id: `${name}-label` }, field.label);
  const inputs = choices.map((choice) =>
    element("input", {
      type: "radio",
      name,
      value: choice.value,
      id: `${name}-${choice.value}`,
      checked: choice.value === value,
      onchange: () => onInput(choice.value),
    }),
  );
  const options = inputs.map((input, at) => [
    input,
    element("label", { for: input.id, class: "choice" }, choices[at].label),
  ]);
  const group = {
    role: "radiogroup",
    "aria-labelledby": label.id,
    "aria-describedby": [help?.id, wrong.node.id].filter(Boolean).join(" "),
  };
  const { node, line } = fieldRow({
    look: "field-choice",
    row: [label, element("div", { class: "choices", ...group }, options)],
    under: [help, wrong.node],
  });
  helpOnFocus(node, help);
  return {
    node,
    line,
    value: () => inputs.find((input) => input.checked)?.value ?? "",
    set(text) {
      for (const input of inputs) input.checked = input.value === text;
    },
    show: ({ error }) => wrong.show(error),
    rename(text) {
      label.textContent = text;
    },
    focus: () => (inputs.find((input) => input.checked) ?? inputs[0])?.focus(),
  };
}
