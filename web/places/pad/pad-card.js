import { button, element } from "../../widgets/element.js";
import { fieldError } from "../../widgets/fields/field-error.js";
import { shortAnswer } from "../../widgets/numbers/answers.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";

/** @import { Answered, Read } from "../../python/contract.d.ts" */

/**
 * How a text of the pad was read, what is wrong with it, and the large number with its key.
 * @param {() => unknown} onKeep
 * @param {() => string} example a sum that may be typed here
 */
export function padCard(onKeep, example) {
  const wrong = fieldError("pad-error");
  const echo = element("p", { class: "echo" });
  const output = element("output", { name: "pad-answer", class: "pad-answer", for: "pad-input" });
  const keep = button("Save", onKeep, { class: "button primary", "aria-label": "Save to project" });
  const say = (/** @type {string} */ sentence) =>
    output.replaceChildren(element("p", { class: "help" }, unbroken(sentence)));

  return {
    nodes: [echo, wrong.node, element("div", { class: "pad-card" }, output, keep)],
    refuse: wrong.show,
    wait(/** @type {boolean} */ isStarting) {
      output.classList.add("waiting");
      const isBlank = !output.querySelector(".main-answer");
      if (isStarting && isBlank) say("Your answer shows up as soon as loading finishes.");
    },
    /**
     * @param {string} asked
     * @param {Answered<Read>} answer
     * @param {{echo: string, quiet: boolean, mayKeep: boolean}} how
     */
    show(asked, answer, { echo: words, quiet, mayKeep }) {
      output.classList.toggle("waiting", !answer.ok);
      output.dataset.for = asked;
      wrong.show(answer.ok ? null : answer.error, { quiet });
      echo.textContent = words;
      keep.disabled = !mayKeep;
      if (answer.ok) output.replaceChildren(shortAnswer(answer.value, answer.tape));
    },
    empty() {
      output.classList.remove("waiting");
      output.dataset.for = "";
      wrong.show(null);
      echo.textContent = "";
      keep.disabled = true;
      say(`Type a length or some math, like ${example()}.`);
    },
  };
}
