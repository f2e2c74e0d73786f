import { button, element, present } from "../../widgets/element.js";
import { fraction } from "../../widgets/numbers/fraction.js";
import { go } from "../go.js";

/** @import { Influence, Range, Sure } from "../../python/contract.d.ts" */

/**
 * What the core says of a number: its ranges, the fit, what to measure again, and where it comes from.
 * @param {Sure} sure
 */
export const sureAnswer = ({ value, label, worst, likely, readings, measure_again: again, fit, said }) =>
  present([
    element(
      "div",
      { class: "main-answer" },
      element("p", { class: "answer-label" }, label),
      fraction(value, "fraction-huge"),
      element("p", {}, said),
    ),
    fit ? element("p", { class: fit.covers ? "fit" : "fit error" }, fit.said) : null,
    again ? element("p", {}, again.said) : null,
    again
      ? button(`Measure ${again.name} again`, () => go(`reading/${again.id}`), { class: "button primary wide" })
      : null,
    worst ? element("dl", { class: "answers" }, present([likely, worst]).map(between)) : null,
    readings.length ? element("h3", {}, "Where the uncertainty comes from") : null,
    readings.length ? element("ul", { class: "sure-readings" }, readings.map(source)) : null,
  ]);

/** @param {Range} range */
const between = ({ label, low, high }) =>
  element(
    "div",
    { class: "answer" },
    element("dt", {}, label),
    element("dd", {}, fraction(low, "fraction-large"), element("span", {}, "to"), fraction(high, "fraction-large")),
  );

/** @param {Influence} reading */
const source = ({ name, text, off, moves, share }) =>
  element(
    "li",
    { class: "answer" },
    element("span", {}, `${name}: ${text}, ${off}`),
    element(
      "span",
      { class: "aside" },
      moves ? [`changes the answer by ${moves.text}`, share].filter(Boolean).join(", ") : "leaves no answer",
    ),
  );
