import { element, present } from "../../widgets/element.js";
import { smallPrint, working } from "../../widgets/numbers/answers.js";
import { cautions } from "../../widgets/numbers/cautions.js";
import { askedList, isFolded, moreAnswers } from "../../widgets/numbers/more-answers.js";
import { partsList } from "../../widgets/numbers/parts-list.js";
import { tape } from "../../widgets/numbers/tape.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";
import { stillNeeded } from "../forms/field-errors.js";
import { inWords } from "../notices.js";
import { headline } from "./headline.js";

/** @import { Answered, Reckoning } from "../../python/contract.d.ts" */
/** @import { Child, Shown } from "../../widgets/widget.d.ts" */
/** @import { Named, Sorted } from "../forms/field-errors.js" */

/** Of the large letters above the keys, on a small phone. */
const MOST_IN_A_LINE = 20;

/**
 * All of the answer of a question but its number, which stands in the bar: what is more than a line opens.
 * @param {Reckoning} answer
 * @param {object} how
 * @param {Child[]} how.fixes what mends a bad one
 * @param {Child} how.steps what is to be done, step by step
 * @param {Child[]} how.acts what can be done with it
 * @param {Set<string>} how.inFull the cautions that stand below in full
 */
export const wholeAnswer = ({ answers: [main, ...others], ...answer }, { fixes, steps, acts, inFull }) =>
  present([
    smallPrintOf(main, answer.verdict),
    main.kind === "lengths" ? askedList(main) : null,
    main.kind === "text" ? element("p", { class: "prose" }, unbroken(main.text)) : null,
    fixes.length ? element("div", { class: "answer-acts" }, fixes) : null,
    steps,
    partsList(answer.parts),
    cautions(answer.cautions.filter(({ full }) => !inFull.has(full))),
    answer.tape ? tape(answer.tape) : null,
    moreAnswers(others),
    element("div", { class: "answer-acts" }, working(answer.working, answer.source), acts),
  ]);

/**
 * What its number is, where the bar has the verdict, and what was rounded away; nothing for a count, which has neither,
 * and for a list behind a line of its own, which says what it is.
 * @param {Shown} main
 * @param {string} verdict
 */
function smallPrintOf(main, verdict) {
  const print = present(smallPrint(main));
  const hasMore = print.length > 0 || main.kind === "text" || (main.kind === "lengths" && !isFolded(main));
  return hasMore ? element("p", { class: "small-print" }, verdict ? named(main.label) : null, print) : null;
}

/** @param {string} label */
const named = (label) => element("span", { class: "answer-label" }, label);

/**
 * What stands in the place of an answer: what is wanted still, and what is wrong with no one field.
 * @param {Sorted} errors
 * @param {Named[]} fields
 */
export const unanswered = ({ wanted, elsewhere }, fields) => [
  ...stillNeeded(wanted, fields),
  ...elsewhere.map((error) => element("p", { class: "error" }, unbroken(inWords(error)))),
];

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
  if (own) return [element("span", { class: "peek-hint" }, unbroken(inWords(own)))];
  if (!answer.ok) return stillNeeded(errors.wanted, fields);
  const { lead, text } = headline(answer);
  const isLong = !lead && text.length > MOST_IN_A_LINE;
  return [
    element(
      "span",
      { class: isLong ? "peek-answer long" : "peek-answer" },
      unbroken(lead),
      element("strong", {}, unbroken(text)),
    ),
  ];
}
