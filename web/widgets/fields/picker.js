import { button, element, freshId } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";
import { choicePicture } from "../pictures/choice-picture.js";

/** @import { Choice } from "../../python/contract.d.ts" */

/**
 * @typedef {object} Picking
 * @property {HTMLElement} node the field that it belongs to: where that goes, it goes along
 * @property {string} title
 * @property {string | null} [help]
 * @property {Choice[]} choices
 * @property {string} picked
 * @property {(value: string) => void} onPick
 */

/**
 * The choices of a field, large, one below the other: a touch picks one and closes. Arrow keys walk them; Escape leaves
 * all as it was.
 * @param {Picking} picking
 */
export function openPicker({ node, title, help, choices, picked, onPick }) {
  const id = freshId("picker");
  const close = () => dialog.close();
  const options = choices.map((choice) =>
    option(choice, choice.value === picked, () => {
      close();
      onPick(choice.value);
    }),
  );
  const list = element(
    "div",
    { class: "picker-list", role: "radiogroup", "aria-labelledby": id, onkeydown: walking(options) },
    options,
  );
  const dialog = element(
    "dialog",
    { class: "dialog picker", "aria-labelledby": id, onclose: () => dialog.remove() },
    element("h2", { id }, title),
    help ? element("p", { class: "help" }, unbroken(help)) : null,
    list,
    button("Cancel", close),
  );
  node.append(dialog);
  dialog.showModal();
  const first = options.find((_, at) => choices[at].value === picked) ?? options[0];
  first?.scrollIntoView({ block: "center" });
  first?.focus();
}

/**
 * @param {Choice} choice
 * @param {boolean} isPicked
 * @param {() => void} onclick
 */
const option = ({ label, help, picture }, isPicked, onclick) =>
  element(
    "button",
    { type: "button", class: "picker-option", role: "radio", "aria-checked": String(isPicked), onclick },
    picture ? choicePicture(picture) : null,
    element(
      "span",
      { class: "picker-words" },
      unbroken(label),
      help ? element("span", { class: "help" }, unbroken(help)) : null,
    ),
  );

/** @param {HTMLElement[]} options */
const walking = (options) => (/** @type {KeyboardEvent} */ event) => {
  const by = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[event.key];
  if (!by) return;
  event.preventDefault();
  const at = options.findIndex((each) => each.matches(":focus"));
  options[(at + by + options.length) % options.length].focus();
};
