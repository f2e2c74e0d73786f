import { element, firstIn } from "../element.js";
import { briefly } from "../numbers/fraction.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { Shown } from "../widget.d.ts" */

const LONG = new Set(["text", "lengths"]);

/**
 * One kept line of a list: its name and number, what it was worked out from, and, opened, what can
 * be done with it.
 * @param {object} line
 * @param {string} line.id
 * @param {string} line.name
 * @param {Shown | null} line.value long words stand under the name
 * @param {string} [line.verdict] what to make of it
 * @param {string} line.summary
 * @param {string} [line.fault] what is wrong with it
 * @param {string} [line.mark] what else must be known of it
 * @param {(HTMLElement | null)[]} acts
 */
export function keptLine({ id, name, value, verdict = "", summary, fault, mark }, acts) {
  const under = (text, className) =>
    text ? element("span", { class: `entry-under ${className}` }, unbroken(text)) : null;
  const isLong = value && LONG.has(value.kind);
  return element(
    "li",
    { class: "entry" },
    element(
      "details",
      {},
      element(
        "summary",
        { "data-line": id },
        element("span", { class: "entry-name" }, name),
        value && !isLong ? briefly(value, "fraction-large") : null,
        under(isLong ? (value.brief ?? value.text) : "", "entry-long"),
        under(verdict, "entry-verdict"),
        under(summary, "entry-summary"),
        under(fault, "error"),
        under(mark, "entry-mark"),
      ),
      element("div", { class: "button-row" }, acts),
    ),
  );
}

/**
 * Go to a line of a list that was just drawn anew; to its heading when the line is gone.
 * @param {HTMLElement} list
 * @param {string} [id]
 */
export function goToLine(list, id) {
  const found = (id && firstIn(list, `[data-line="${CSS.escape(id)}"]`)) || firstIn(list, "h2");
  found?.closest(".group")?.setAttribute("open", "");
  found?.focus();
  found?.scrollIntoView({ block: "nearest" });
}

/**
 * The line to go to when `id` is taken away: the one below it, else the one above.
 * @param {{id: string}[]} lines
 * @param {string} id
 */
export function neighborOf(lines, id) {
  const at = lines.findIndex((each) => each.id === id);
  return (lines[at + 1] ?? lines[at - 1])?.id;
}
