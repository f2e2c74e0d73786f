import { element } from "../element.js";
import { sentences, unbroken } from "../numbers/unbroken.js";
import { drawing } from "../pictures/drawing.js";
import { boardSaid, leftOver } from "./plan-board.js";
import { planBuy } from "./plan-buy.js";
import { planCuts, planTogether } from "./plan-cuts.js";
import { planMarks } from "./plan-marks.js";

/** @import { CuttingPlan, PlanBoard, PlanGroup } from "../../python/contract.d.ts" */

/** So high that a page takes a board with its cuts, and mostly the next one too. */
const HIGH = 240;

/**
 * The cutting plan on paper, from a page of its own on: what to buy, and every board with its drawing and its cuts.
 * @param {CuttingPlan} plan
 */
export const planSheet = (plan) =>
  element(
    "section",
    { class: "plan-sheet", "aria-label": "Cutting plan" },
    element("h4", {}, "Cutting plan"),
    element("p", {}, unbroken(sentences([plan.said, plan.waste, plan.stale]))),
    element("p", {}, unbroken(plan.note)),
    planBuy(plan, { heading: "h5" }),
    plan.left_out.map(({ name, error }) => element("p", {}, unbroken(`Not in the plan: ${name}. ${error.message}`))),
    plan.groups.map(groupOnPaper),
  );

/** @param {PlanGroup} group */
const groupOnPaper = ({ material, said, together, boards }) =>
  element(
    "section",
    {},
    element("h5", {}, unbroken(`${material}: ${said}`)),
    planTogether(together),
    boards.map(boardOnPaper),
  );

/** @param {PlanBoard} board */
const boardOnPaper = (board) =>
  element(
    "div",
    { class: "plan-sheet-board" },
    element("h6", {}, board.name),
    element("p", {}, unbroken(boardSaid(board))),
    board.drawing ? drawing(board.drawing, { high: HIGH }) : null,
    planMarks(board.marks),
    planCuts(board.cuts, { hasBoxes: true }),
    element("p", {}, leftOver(board)),
  );
