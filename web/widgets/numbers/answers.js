import { element } from "../element.js";
import { fold } from "./fold.js";
import { fraction } from "./fraction.js";
import { tape } from "./tape.js";
import { unbroken } from "./unbroken.js";

/** @import { Lengths, Step, Tape } from "../../python/contract.d.ts" */
/** @import { Child, Shown } from "../widget.d.ts" */

/** @param {string | undefined} text */
const aside = (text) => (text ? element("span", { class: "aside" }, unbroken(text)) : null);

/**
 * What was rounded away, the other unit system and the decimals: the small print of a length.
 * @param {Shown} value
 */
export function smallPrint(value) {
  const dropped = value.kind === "length" ? value.dropped_text || "exact" : value.dropped_text;
  return [aside(dropped), aside(value.other), aside(value.in_decimals)];
}

/**
 * The main answer, as large as the screen allows, `acts` right under it, and its place on the tape.
 * @param {Shown} value
 * @param {Tape | null} drawnTape
 * @param {Child[]} acts
 */
export function mainAnswer(value, drawnTape, acts) {
  return element(
    "div",
    { class: "main-answer" },
    value.label ? element("p", { class: "answer-label" }, value.label) : null,
    told(value, "fraction-huge"),
    element("p", { class: "small-print" }, smallPrint(value)),
    element("div", { class: "answer-acts" }, acts),
    drawnTape ? [tape(drawnTape), element("p", { class: "tape-words" }, unbroken(drawnTape.words))] : null,
  );
}

/** @param {Lengths} value */
const listed = (value) =>
  element(
    "ol",
    { class: "listed" },
    value.items.map((item) =>
      element(
        "li",
        {},
        element("span", { class: "answer-label" }, item.label),
        fraction(item, "fraction-large"),
        item.direction === "exact" ? null : aside(item.dropped_text),
      ),
    ),
  );

/**
 * @param {Shown} value
 * @param {string} size
 */
const told = (value, size) => {
  if (value.kind === "lengths") return listed(value);
  return value.kind === "text" ? element("p", { class: "prose" }, unbroken(value.text)) : fraction(value, size);
};

/**
 * The other answers, one a line.
 * @param {Shown[]} values
 */
export function otherAnswers(values) {
  if (values.length === 0) return null;
  return element(
    "dl",
    { class: "answers" },
    values.map((value) =>
      element(
        "div",
        { class: `answer answer-${value.kind}` },
        element("dt", {}, value.label),
        element(
          "dd",
          {},
          told(value, "fraction-large"),
          value.direction === "exact" ? null : aside(value.dropped_text),
        ),
      ),
    ),
  );
}

/**
 * The arithmetic with this case's numbers, and where its rule comes from.
 * @param {Step[]} lines
 * @param {string} source
 */
export const working = (lines, source) =>
  fold("Show the math", [
    ...lines.map((line) => element("p", { class: "working-line" }, unbroken(line.text))),
    element("p", { class: "source" }, unbroken(source)),
  ]);
