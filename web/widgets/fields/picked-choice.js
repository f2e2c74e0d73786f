import { element, freshId } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";
import { fieldError } from "./field-error.js";
import { fieldRow } from "./field-row.js";
import { openPicker } from "./picker.js";

/** @import { ChoiceOptions, FieldWidget } from "../widget.d.ts" */

/** Letters that two lines of a narrow cell have room for. */
const LONG = 30;

/**
 * One of several that have no room in their row: it says which one holds, and opens the list of all.
 * @param {ChoiceOptions} options
 * @returns {FieldWidget<string>}
 */
export function pickedChoice({ field, value, onInput }) {
  const { choices = [] } = field;
  const id = freshId(field.key);
  const wrong = fieldError(`${id}-error`);
  const name = element("span", { class: "field-label" }, field.label);
  const now = element("span", { class: "picked-now" });
  let picked = value ?? "";

  function set(/** @type {string} */ text) {
    picked = text ?? "";
    const chosen = choices.find((choice) => choice.value === picked);
    now.textContent = unbroken(chosen?.label ?? "Choose…");
    now.classList.toggle("picked-none", !chosen);
    now.classList.toggle("picked-long", now.textContent.length > LONG);
  }

  function open() {
    const title = name.textContent ?? "";
    openPicker({ node, title, help: field.help, choices, picked, onPick: pick });
  }

  function pick(/** @type {string} */ text) {
    set(text);
    onInput(text);
    // Heard as the change of any other field is.
    node.dispatchEvent(new Event("change", { bubbles: true }));
  }

  const attributes = { type: "button", class: "picked", "aria-haspopup": "dialog", "aria-describedby": wrong.node.id };
  const row = element("button", { ...attributes, onclick: open }, name, " ", now);
  const { node, line } = fieldRow({ look: "field-choice", row: [row], under: [wrong.node] });
  set(value);
  return {
    node,
    line,
    value: () => picked,
    set,
    show: ({ error }) => wrong.show(error),
    rename(text) {
      name.textContent = text;
    },
    focus: () => row.focus(),
    open,
  };
}
