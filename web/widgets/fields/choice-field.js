import { element, freshId } from "../element.js";
import { fieldError } from "./field-error.js";

/** @import { ChoiceOptions, FieldWidget } from "../widget.d.ts" */

const FEW = 6;

/**
 * One of several: buttons side by side when few, a list when many.
 * @param {ChoiceOptions} options
 * @returns {FieldWidget<string>}
 */
export function choiceField({ field, value, onInput }) {
  const { choices = [] } = field;
  return choices.length <= FEW ? few(field, choices, value, onInput) : many(field, choices, value, onInput);
}

/**
 * @param {ChoiceOptions["field"]} field
 * @param {{value: string, label: string}[]} choices
 * @param {string} value
 * @param {(value: string) => void} onInput
 * @returns {FieldWidget<string>}
 */
function few(field, choices, value, onInput) {
  const name = freshId(field.key);
  const wrong = fieldError(`${name}-error`);
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
  const node = element(
    "fieldset",
    { class: "field field-choice", "aria-describedby": `${name}-error` },
    element("legend", {}, field.label),
    element("div", { class: "choices" }, options),
    field.help ? element("p", { class: "help" }, field.help) : null,
    wrong.node,
  );
  return {
    node,
    value: () => inputs.find((input) => input.checked)?.value ?? "",
    set(text) {
      for (const input of inputs) input.checked = input.value === text;
    },
    show: ({ error }) => wrong.show(error),
  };
}

/**
 * @param {ChoiceOptions["field"]} field
 * @param {{value: string, label: string}[]} choices
 * @param {string} value
 * @param {(value: string) => void} onInput
 * @returns {FieldWidget<string>}
 */
function many(field, choices, value, onInput) {
  const id = freshId(field.key);
  const wrong = fieldError(`${id}-error`);
  const select = element(
    "select",
    { id, "aria-describedby": `${id}-error`, onchange: () => onInput(select.value) },
    choices.some((choice) => choice.value === "") ? null : element("option", { value: "" }, "Choose…"),
    choices.map((choice) => element("option", { value: choice.value }, choice.label)),
  );
  select.value = value ?? "";
  const node = element(
    "div",
    { class: "field" },
    element("label", { for: id }, field.label),
    select,
    field.help ? element("p", { class: "help" }, field.help) : null,
    wrong.node,
  );
  return {
    node,
    value: () => select.value,
    set(text) {
      select.value = text ?? "";
    },
    show: ({ error }) => wrong.show(error),
  };
}
