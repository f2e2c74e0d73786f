import { element, present } from "../../widgets/element.js";
import { cautions, mainAnswer, otherAnswers, working } from "../../widgets/numbers/answers.js";
import { drawing } from "../../widgets/pictures/drawing.js";
import { stillNeeded } from "../forms/field-errors.js";
import { inWords } from "../notices.js";

/** @import { Answered, Length, Reckoning } from "../../python/contract.d.ts" */
/** @import { Child } from "../../widgets/widget.d.ts" */
/** @import { Named, Sorted } from "../forms/field-errors.js" */

/**
 * The whole answer of a question; `acts` stand right under its large number.
 * @param {Reckoning} answer
 * @param {Child[]} acts
 */
export const answered = (answer, acts) =>
  present([
    mainAnswer(answer.answers[0], answer.tape, acts),
    answer.drawing ? drawing(answer.drawing) : null,
    otherAnswers(answer.answers.slice(1)),
    cautions(answer.cautions),
    working(answer.working, answer.source),
  ]);

/**
 * What stands in the place of an answer: what is wanted still, and what is wrong with no one field.
 * @param {Sorted} errors
 * @param {Named[]} fields
 */
export const unanswered = ({ wanted, elsewhere }, fields) => [
  ...stillNeeded(wanted, fields),
  ...elsewhere.map((error) => element("p", { class: "error" }, inWords(error))),
];

const MOST_ITEMS = 3;
/** @param {Length[]} items */
const inOneLine = (items) =>
  items.length > MOST_ITEMS ? `${items.length} lengths` : items.map(({ brief }) => brief).join(", ");

/**
 * The same in a line or two, above the keys: of the field being typed in, of what is wanted, or the answer.
 * @param {Answered<Reckoning> | null} answer
 * @param {Sorted} errors
 * @param {Named[]} fields
 * @param {string} focused
 */
export function inLittle(answer, errors, fields, focused) {
  if (!answer) return [];
  const own = errors.beside.find((error) => error.field === focused);
  if (own) return [element("span", { class: "peek-hint" }, inWords(own))];
  if (!answer.ok) return stillNeeded(errors.wanted, fields);
  const [main] = answer.answers;
  const text = main.kind === "lengths" ? inOneLine(main.items) : "brief" in main ? main.brief : main.text;
  return [element("span", { class: "peek-answer" }, main.label, element("strong", {}, text))];
}
