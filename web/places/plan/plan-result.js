import { element, present } from "../../widgets/element.js";
import { sentences, unbroken } from "../../widgets/numbers/unbroken.js";
import { planBoard } from "../../widgets/project/plan-board.js";
import { planBuy } from "../../widgets/project/plan-buy.js";
import { planTogether } from "../../widgets/project/plan-cuts.js";
import { planLeftOut } from "../../widgets/project/plan-left-out.js";
import { saveOffcuts } from "../forms/save-offcuts.js";
import { placeOf } from "../forms/to-fill.js";
import { go } from "../go.js";
import { buyActs } from "./buy-acts.js";
import { planShown } from "./plan-shown.js";
import { wood } from "./wood.js";

/** @import { CuttingPlan, PlanBoard, PlanGroup, View } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/** So many boards are all open; of more only the next. */
const FEW = 3;

/**
 * What is to be bought, what is left out, and each board by the material that it is of; drawn anew only for another plan.
 * @param {App} app
 */
export function planResult(app) {
  const node = element("div", { class: "plan-result" });
  /** Which boards a person opened or folded. @type {Map<string, boolean>} */
  const folds = new Map();
  let drawn = "";

  function draw() {
    const { view, described } = app.state.get();
    const { plan, isKept } = planShown(app.state.get());
    const now = JSON.stringify([plan, isKept, Boolean(described)]);
    if (now === drawn) return;
    drawn = now;
    if (!isKept) folds.clear();
    const actOf = (/** @type {PlanBoard} */ board) => (isKept ? saveOffcuts(app, board) : null);
    const [buys, out] = plan ? [bought(app, plan, isKept), leftOut(app, plan)] : [];
    const all = plan ? groups(plan, { view, folds, actOf }) : [];
    // What is left out asks for more wood: the way to it is above, however long the list of that is.
    node.replaceChildren(...present([buys ?? null, wood(app), out ?? null, ...all]));
  }
  return { node, draw };
}

/**
 * @param {App} app
 * @param {CuttingPlan} plan
 * @param {boolean} isKept
 */
const bought = (app, plan, isKept) => planBuy(plan, { acts: buyActs(app, plan, isKept) });

/**
 * @param {App} app
 * @param {CuttingPlan} plan
 */
const leftOut = (app, { left_out: left }) =>
  planLeftOut(left, ({ entry }) => go(placeOf(app.state.get(), { id: entry, kind: "line" })));

/**
 * @param {CuttingPlan} plan
 * @param {object} shown
 * @param {View | null} shown.view
 * @param {Map<string, boolean>} shown.folds
 * @param {(board: PlanBoard) => HTMLElement | null} shown.actOf
 */
function groups({ groups: all }, { view, folds, actOf }) {
  const boards = all.flatMap((group) => group.boards);
  const next = boards.find(({ state }) => state === "begun") ?? boards.find(({ state }) => state === "to cut");
  const pieces = view?.pieces ?? [];
  return all.map((group) =>
    planGroup(
      group,
      group.boards.map((board) =>
        planBoard(board, {
          pieces,
          isOpen: folds.get(board.key) ?? (boards.length <= FEW || board === next),
          act: actOf(board),
          onFold: (isOpen) => folds.set(board.key, isOpen),
        }),
      ),
    ),
  );
}

/**
 * @param {PlanGroup} group
 * @param {HTMLElement[]} boards
 */
const planGroup = ({ material, said, best, waste, together }, boards) =>
  element(
    "section",
    { class: "plan-group" },
    element("h3", {}, unbroken(material)),
    element("p", { class: "help" }, unbroken(sentences([said, best, waste]))),
    planTogether(together),
    boards,
  );
