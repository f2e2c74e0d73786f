import { element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { Echo } from "../widget.d.ts" */

/** Units and spaces, which a bare number goes without. */
const BESIDE_THE_NUMBER = /inches|inch|in\b|mm|cm|degrees|°|″|′|"|'|%|\s/g;
const bare = (/** @type {string} */ text) => text.toLowerCase().replace(BESIDE_THE_NUMBER, "");

/** Whether a text is what was typed with no more than its unit: `68` and `68 °F`. */
const saysTheSame = (/** @type {string} */ typed, /** @type {string} */ text) =>
  bare(typed) === bare(text) ||
  (/\d$/.test(typed) && text.startsWith(`${typed} `) && !/^ \d/.test(text.slice(typed.length)));

/** A sum as one calls the names in it, without their brackets. */
const called = (/** @type {string} */ text) => text.replace(/\[([^[\]]*)\]/g, "$1");

/**
 * How a text was read, where that says more than the text itself: `31 5/8` needs none, `31.6` does. A name is shown
 * whole with its number, and a sum with names whole before them: the narrow field has no room for either.
 * @param {string} id what the field is described by
 */
export function echoLine(id) {
  const node = element("div", { class: "echo", id });

  /**
   * @param {string} typed
   * @param {Echo | undefined} echo
   */
  function show(typed, echo) {
    const { text, names = [] } = typeof echo === "object" ? echo : { text: echo ?? "" };
    const isName = names.length === 1 && typed.trim() === `[${names[0].name}]`;
    // What a blank field stands for, it says itself.
    const saysMore = text && typed.trim() && !isName && (names.length > 0 || !saysTheSame(typed.trim(), text));
    node.replaceChildren(saysMore ? element("span", {}, `= ${unbroken(called(text))}`) : "", ...names.map(chip));
  }

  return { node, show };
}

/** @param {{name: string, stands_for: string}} used */
const chip = ({ name, stands_for: number }) =>
  element("span", { class: "chip" }, element("span", {}, name), " is ", element("strong", {}, unbroken(number)));
