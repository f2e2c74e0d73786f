import { button, element } from "../../widgets/element.js";
import { fraction } from "../../widgets/numbers/fraction.js";
import { go } from "../go.js";

/** What the core says of a number: its ranges, the fit, what to measure again, and where it comes from. */
export const sureAnswer = ({ value, label, worst, likely, readings, measure_again: again, fit, said }) =>
  [
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
    worst ? element("dl", { class: "answers" }, [likely, worst].filter(Boolean).map(between)) : null,
    readings.length ? element("h3", {}, "Where it comes from") : null,
    readings.length ? element("ul", { class: "sure-readings" }, readings.map(source)) : null,
  ].filter(Boolean);

const between = ({ label, low, high }) =>
  element(
    "div",
    { class: "answer" },
    element("dt", {}, label),
    element("dd", {}, fraction(low, "fraction-large"), element("span", {}, "to"), fraction(high, "fraction-large")),
  );

const source = ({ name, text, off, moves, share }) =>
  element(
    "li",
    { class: "answer" },
    element("span", {}, `${name}: ${text}, ${off}`),
    element(
      "span",
      { class: "aside" },
      moves ? [`moves it by ${moves.text}`, share].filter(Boolean).join(", ") : "leaves no answer",
    ),
  );
