import { button, element } from "../../widgets/element.js";
import { fieldError } from "../../widgets/fields/field-error.js";
import { shortAnswer } from "../../widgets/numbers/short-answer.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";

/** @import { Answered, Read } from "../../python/contract.d.ts" */

/**
 * How a text of the pad was read, what is wrong with it, and the large number with its key.
 * @param {() => unknown} onKeep
 * @param {() => string} help what is said where nothing was typed yet
 */
export function padCard(onKeep, help) {
  const wrong = fieldError("pad-error");
  const echo = element("p", { class: "echo" });
  const output = element("output", { name: "pad-answer", class: "pad-answer", for: "pad-input" });
  const keep = button("Save", onKeep, { class: "button primary", "aria-label": "Save to project" });
  const say = (/** @type {string} */ sentence) =>
    output.replaceChildren(element("p", { class: "help" }, unbroken(sentence)));

  return {
    nodes: [echo, wrong.node, element("div", { class: "pad-card" }, output, keep)],
    refuse: wrong.show,
    /**
     * The answer to `asked` is on its way: soon, or once the core has started.
     * @param {string} asked
     * @param {boolean} isStarting
     */
    wait(asked, isStarting) {
      output.classList.add("waiting");
      if (isStarting && asked !== output.dataset.for) say("Your answer shows up as soon as loading finishes.");
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
      output.replaceChildren(answer.ok ? shortAnswer(answer) : noAnswer());
    },
    empty() {
      output.classList.remove("waiting");
      output.dataset.for = "";
      wrong.show(null);
      echo.textContent = "";
      keep.disabled = true;
      say(help());
    },
  };
}

/** What is not finished, or can't be read, has no number: not that of the text before it either. */
const noAnswer = () =>
  element(
    "p",
    { class: "pad-none" },
    element("span", { "aria-hidden": "true" }, "–"),
    element("span", { class: "heard" }, "No answer yet"),
  );
