import { element, freshId } from "../element.js";
import { echoLine } from "./echo-line.js";
import { fieldError } from "./field-error.js";
import { fieldRow } from "./field-row.js";
import { helpLine, helpOnFocus } from "./help-on-focus.js";
import { blankText, helpOf } from "./left-blank.js";

/** @import { DrawnField, FieldOptions, TextWidget, Told } from "../widget.d.ts" */

/**
 * What the phone's own keyboard and pickers are for: words and moments. All else has the keypad.
 * @param {DrawnField} field
 */
const isWords = ({ kind }) => kind === "text" || kind === "moment";

/**
 * @param {DrawnField} field
 * @param {string} label
 */
const withUnit = ({ kind, unit }, label) => (kind === "number" && unit ? `${label}, ${unit}` : label);

/**
 * A field for a length, an angle, a count, a number, words or a moment: label, text with the keypad, how it
 * was read, what is wrong.
 * The text is the person's: nothing here changes it. All of it is selected when the field gets the
 * focus, so that typing replaces it; a second touch places the caret. What is wrong is said aloud
 * only when the field has been left.
 * @param {FieldOptions<string>} options
 * @returns {TextWidget}
 */
export function textField({ field, value, onInput, onFocus }) {
  const id = freshId("field");
  /** @type {Told} */
  let latest = {};
  const echo = echoLine(`${id}-echo`);
  const help = helpLine(helpOf(field), `${id}-help`);
  const wrong = fieldError(`${id}-error`);
  const described = [echo.node, help, wrong.node].flatMap((each) => each?.id ?? []).join(" ");
  const input = inputOf(field, { id, described, value, onInput, onFocus, onLook: say });
  const label = element("label", { for: id }, withUnit(field, field.label));
  const { node, line } = fieldRow({ row: [label, input], under: [echo.node, help, wrong.node] });
  helpOnFocus(node, help);

  function say() {
    const quiet = document.activeElement === input;
    echo.show(input.value, latest.echo);
    input.setAttribute("aria-invalid", latest.error && !quiet ? "true" : "false");
    wrong.show(latest.error, { quiet });
  }

  return {
    node,
    line,
    input,
    value: () => input.value,
    set(text) {
      input.value = text;
    },
    show(said) {
      latest = said;
      say();
    },
    rename(text) {
      label.textContent = withUnit(field, text);
    },
    focus: () => input.focus(),
  };
}

/**
 * The input of a field.
 * @param {DrawnField} field
 * @param {object} options
 * @param {string} options.id
 * @param {string} options.described the ids of what is said of it
 * @param {string} options.value
 * @param {(text: string) => void} options.onInput
 * @param {((input: HTMLInputElement) => void)} [options.onFocus]
 * @param {() => void} options.onLook called when it gets the focus, and when it is left
 */
function inputOf(field, { id, described, value, onInput, onFocus, onLook }) {
  let entering = false;
  const input = element("input", {
    id,
    name: field.key,
    type: field.kind === "moment" ? "datetime-local" : "text",
    inputmode: isWords(field) ? "text" : "none",
    autocomplete: "off",
    spellcheck: "false",
    "data-keypad": isWords(field) ? null : field.kind,
    "aria-describedby": described,
    placeholder: blankText(field),
    value,
    oninput: () => onInput(input.value),
    onfocus: () => {
      input.select();
      onLook();
      if (!isWords(field)) onFocus?.(input);
    },
    onblur: onLook,
    // The browser sets its caret after the focus, so a touch selects once more when it ends.
    onpointerdown: () => {
      entering = document.activeElement !== input;
    },
    onclick: () => {
      if (entering) input.select();
      entering = false;
      if (!isWords(field)) onFocus?.(input);
    },
  });
  return input;
}
