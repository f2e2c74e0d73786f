import { element } from "../element.js";
import { unbroken } from "./unbroken.js";

/** With more digits it is drawn smaller where it has to share its line. */
const MOST_BESIDE = 4;

/** @import { Stack } from "../../python/contract.d.ts" */
/** @import { Shown } from "../widget.d.ts" */

/**
 * A value of the core as a number to read at arm's length: a length is drawn with a stacked
 * fraction, all else as its text. A screen reader hears the words.
 * @param {Shown} value
 * @param {string} [className]
 */
export function fraction(value, className = "") {
  const node = seen(value, className);
  node.append(element("span", { class: "heard" }, value.words ?? value.text));
  return node;
}

/**
 * The same in a row of a list: its parts stand in columns, and its words are its name, no text of the page.
 * @param {Shown} value
 */
export function inColumns(value) {
  const node = seen(value, "fraction-row");
  node.setAttribute("role", "img");
  node.setAttribute("aria-label", value.words ?? value.text);
  return node;
}

/**
 * @param {Shown} value
 * @param {string} className
 */
function seen(value, className) {
  const { stack } = value;
  const body = stack ? stacked(stack) : [unbroken(value.brief ?? value.text)];
  const width = stack ? drawn(stack).length : 0;
  const isBare = stack && !stack.whole && !stack.feet;
  const classes = [
    "fraction",
    stack ? "" : "fraction-plain",
    isBare ? "fraction-bare" : "",
    width > MOST_BESIDE ? "fraction-wide" : "",
    className,
  ];
  const node = element(
    "span",
    { class: classes.filter(Boolean).join(" ") },
    element("span", { class: "fraction-seen", "aria-hidden": "true" }, body),
  );
  if (stack) node.style.setProperty("--digits", String(width + (stack.feet ? 1 : 0) + (stack.numerator ? 1.5 : 0)));
  return node;
}

/**
 * The same in a list, where no small print says that something was rounded away: a ≈ does, and (down) or (up).
 * @param {Shown} value
 * @param {string} [className]
 */
export function briefly(value, className) {
  const rounded = value.kind === "length" && value.direction !== "exact";
  const way = value.way ? element("span", { class: "aside" }, value.way) : null;
  return element("span", { class: "briefly" }, rounded ? "≈ " : null, fraction(value, className), way);
}

/**
 * What takes its room as a digit does; a minus is as wide as two.
 * @param {Stack} stack
 */
const drawn = ({ sign, feet, whole, unit }) => [sign, sign, feet, whole, unit].filter(Boolean).join("");

/** @param {Stack} stack */
function stacked({ sign, feet, whole, numerator, denominator, unit }) {
  /** @type {(Node | string)[]} */
  const parts = [];
  if (sign) parts.push(sign);
  if (feet) parts.push(element("span", { class: "fraction-feet" }, `${feet}′`));
  if (whole) parts.push(element("span", { class: "fraction-whole" }, whole));
  const tail = element("span", { class: "fraction-tail" });
  if (numerator) {
    tail.append(
      element(
        "span",
        { class: "fraction-stack" },
        element("span", {}, numerator),
        element("span", { class: "fraction-under" }, denominator),
      ),
    );
  }
  tail.append(element("span", { class: "fraction-unit" }, unit));
  return [...parts, tail];
}
