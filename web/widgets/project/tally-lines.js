import { element } from "../element.js";
import { briefly } from "../numbers/fraction.js";

/** @import { TallyLineTold } from "../../python/contract.d.ts" */

/**
 * The last lines of the tally; a touch uses one again in the sum being typed.
 * @param {TallyLineTold[]} lines
 * @param {(line: TallyLineTold) => void} onUse
 */
export function tallyLines(lines, onUse) {
  return lines.map((line) =>
    element(
      "button",
      {
        type: "button",
        class: "tally-line",
        onpointerdown: (event) => event.preventDefault(),
        onclick: () => onUse(line),
      },
      element("span", { class: "tally-name" }, element("span", { class: "heard" }, "Use line "), line.name || line.id),
      element("span", { class: "tally-text" }, line.text),
      line.value ? briefly(line.value) : element("span", { class: "error" }, "?"),
    ),
  );
}

const STEPS = { again: "again", half: "÷ 2", double: "× 2", kerf: "− kerf" };

/**
 * What was entered and waits until the lines before it are on the tally.
 * @param {{text?: string, step?: string}[]} entering
 */
export const waitingLines = (entering) =>
  entering.map(({ text, step }) =>
    element(
      "p",
      { class: "tally-waiting" },
      element("span", { class: "tally-name" }, "…"),
      element("span", { class: "tally-text" }, text ?? STEPS[step]),
    ),
  );
