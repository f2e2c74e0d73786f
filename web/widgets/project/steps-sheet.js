import { element, present } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";
import { whenOf } from "./check-list.js";

/** @import { CheckList, StepToDo } from "../../python/contract.d.ts" */

/**
 * The steps of a line on paper, a box for each, ticked where it is done.
 * @param {CheckList} list
 */
export const stepsSheet = ({ name, title, steps }) =>
  element(
    "li",
    { class: "shop-steps" },
    element("p", { class: "shop-title" }, name === title ? name : `${name} (${title})`),
    element("ol", {}, steps.map(row)),
  );

/**
 * A caution is in full where it comes up first, and short after that: paper opens nothing.
 * @param {StepToDo} step
 */
const row = (step) =>
  element(
    "li",
    { class: "shop-step" },
    box(step),
    element(
      "div",
      {},
      element("p", {}, element("strong", {}, unbroken(step.said))),
      present([whenOf(onPaper(step)), step.done ? null : step.caution?.full, step.about])
        .filter(Boolean)
        .map((line) => element("p", {}, unbroken(line))),
    ),
  );

/**
 * Paper does not know the time at which it is read: nothing is due on it.
 * @param {StepToDo} step
 * @returns {StepToDo}
 */
const onPaper = (step) => ({ ...step, state: step.done ? "done" : "next" });

/** @param {StepToDo} step */
const box = ({ done }) =>
  element("span", { class: done ? "box ticked" : "box", role: "img", "aria-label": done ? "Done" : "Not done" });
