import { element } from "./element.js";
import { briefly } from "./fraction.js";

/** What stands for a line in a later sum: its name, else its number. */
export const lineMark = ({ id, name }) => `[${name || id}]`;

/** The last lines of the tally; a touch uses one again in the sum being typed. */
export function tallyLines(lines, onUse) {
  return lines.map((line) =>
    element(
      "button",
      {
        type: "button",
        class: "tally-line",
        onpointerdown: (event) => event.preventDefault(),
        onclick: () => onUse(lineMark(line)),
      },
      element("span", { class: "tally-name" }, element("span", { class: "heard" }, "Use line "), line.name || line.id),
      element("span", { class: "tally-text" }, line.text),
      line.value ? briefly(line.value) : element("span", { class: "trouble" }, "?"),
    ),
  );
}
