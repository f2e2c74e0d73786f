import { element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @type {Element | null} the field whose help stands open */
let helped = null;

/**
 * The help of a field, which stands below it from when the field gets the focus until another one with help does: what
 * lies below moves when a field is gone to, never when one is left by touching something else.
 * @param {string | null | undefined} text
 * @param {string} id what the field is described by
 * @returns {HTMLElement | null}
 */
export const helpLine = (text, id) => (text ? element("p", { class: "help field-help", id }, unbroken(text)) : null);

/**
 * @param {HTMLElement} node a field, with or without help
 * @param {HTMLElement | null} help its line
 */
export function helpOnFocus(node, help) {
  if (!help) return;
  node.classList.add("has-help");
  node.addEventListener("focusin", ({ target }) => {
    // A button that is pressed must not move away from under the thumb.
    if (!(target instanceof HTMLInputElement) || target.closest(".has-help") !== node) return;
    helped?.classList.remove("helped");
    node.classList.add("helped");
    helped = node;
    node.scrollIntoView({ block: "nearest" });
    // A list may be higher than what the keys leave, and has its help above its rows.
    target.scrollIntoView({ block: "nearest" });
  });
}
