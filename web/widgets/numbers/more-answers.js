import { element, present } from "../element.js";
import { fold } from "./fold.js";
import { inColumns } from "./fraction.js";
import { unbroken } from "./unbroken.js";

/** @import { Lengths } from "../../python/contract.d.ts" */
/** @import { Shown } from "../widget.d.ts" */

/** So many stand open; more than these are one line that opens. */
const FEW = 2;
const SHORT_TEXT = 40;
const SHORT_LIST = 6;

/** @param {Shown} value */
const isRow = (value) => value.kind !== "lengths" && !(value.kind === "text" && value.text.length > SHORT_TEXT);

/**
 * The answers behind the main one: few short ones as they are, others behind one line that says the first of them.
 * @param {Shown[]} values
 */
export function moreAnswers(values) {
  const rows = values.filter(isRow);
  if (values.length === 0) return null;
  if (rows.length === values.length && rows.length <= FEW) return rowsOf(rows);
  const others = values.filter((value) => !isRow(value));
  return fold(summaryOf(values), present([rows.length ? rowsOf(rows) : null, ...others.flatMap(longer)]));
}

/** @param {Lengths} value */
export const isFolded = ({ items }) => items.length > SHORT_LIST;

/**
 * A list that was asked for: it stands open where it is short.
 * @param {Lengths} value
 */
export const askedList = (value) => (isFolded(value) ? fold(summaryOf([value]), listOf(value)) : listOf(value));

/** @param {Shown[]} values */
function summaryOf([first, ...rest]) {
  const { label, kind } = first;
  const number = first.brief ?? first.text;
  const told = kind === "lengths" ? `${label} (${first.items.length})` : isRow(first) ? `${label}: ${number}` : label;
  return unbroken(rest.length ? `${told}, ${rest.length} more` : told);
}

/**
 * A list, or a text of some length, below its label.
 * @param {Shown} value
 */
const longer = (value) => [
  element("p", { class: "answer-label" }, value.label),
  value.kind === "lengths" ? listOf(value) : element("p", { class: "prose" }, unbroken(value.text)),
];

/** @param {Shown[]} rows */
const rowsOf = (rows) =>
  element(
    "dl",
    { class: "answers" },
    rows.map((value) =>
      element(
        "div",
        { class: `answer answer-${value.kind}` },
        element("dt", {}, value.label),
        element("dd", {}, dropped(value), value.kind === "text" ? unbroken(value.text) : inColumns(value)),
      ),
    ),
  );

/**
 * Why they were rounded as they were is said once.
 * @param {Lengths} value
 */
const listOf = ({ items }) =>
  element(
    "ol",
    { class: "listed" },
    items.map((item) =>
      element(
        "li",
        {},
        element("span", { class: "answer-label" }, item.label),
        element("span", { class: "listed-number" }, dropped(item), inColumns(item)),
      ),
    ),
    [...new Set(items.map(({ why }) => why))].filter(Boolean).map((why) => element("li", { class: "dropped" }, why)),
  );

/** @param {Shown} value */
function dropped(value) {
  if (value.direction === "exact" || !value.dropped_text) return null;
  return element("span", { class: "dropped" }, unbroken(value.dropped_text.replace(`, ${value.why}`, "")));
}
