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
/** @param {Shown} value */
const dropped = (value) =>
  value.direction === "exact" || !value.dropped_text ? null : element("span", { class: "dropped" }, value.dropped_text);

/**
 * The answers behind the main one, each in one line: two or fewer as they are, more behind a line that says the first of
 * them, a list behind how many it has, a text of some length behind its label.
 * @param {Shown[]} values
 */
export function moreAnswers(values) {
  const rows = values.filter(isRow);
  const lists = values.filter((value) => value.kind === "lengths");
  const texts = values.filter((value) => value.kind === "text" && !isRow(value));
  return present([
    rows.length > FEW ? fold(summaryOf(rows), rowsOf(rows)) : rows.length ? rowsOf(rows) : null,
    ...lists.map(listFold),
    texts.length ? textsFold(texts) : null,
  ]);
}

/**
 * A list that was asked for: it stands open where it is short.
 * @param {Lengths} value
 */
export const askedList = (value) => (value.items.length > SHORT_LIST ? listFold(value) : listOf(value));

/** @param {Shown[]} rows */
const summaryOf = ([first, ...rest]) =>
  `${first.label}${first.kind === "text" ? ":" : ""} ${first.brief ?? first.text}, ${rest.length} more`;

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

/** @param {Lengths} value */
const listFold = (value) => fold(`${value.label} (${value.items.length})`, listOf(value));

/** @param {Lengths} value */
const listOf = (value) =>
  element(
    "ol",
    { class: "listed" },
    value.items.map((item) =>
      element(
        "li",
        {},
        element("span", { class: "answer-label" }, item.label),
        element("span", { class: "listed-number" }, dropped(item), inColumns(item)),
      ),
    ),
  );

/** @param {Shown[]} texts */
const textsFold = ([first, ...rest]) =>
  fold(
    rest.length ? `${first.label}, ${rest.length} more` : first.label,
    [first, ...rest].flatMap(({ label, text }) => [
      rest.length ? element("p", { class: "answer-label" }, label) : null,
      element("p", { class: "prose" }, unbroken(text)),
    ]),
  );
