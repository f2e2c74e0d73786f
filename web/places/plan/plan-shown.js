import { isOfBefore } from "../../store/project/identity.js";

/** @import { Act, CuttingPlan } from "../../python/contract.d.ts" */
/** @import { State } from "../../store/shapes.d.ts" */

/**
 * The plan that is shown: the best one found, until it is used; else the project's own. `act` keeps it, `isKept` says
 * that it is kept already.
 * @param {State} state
 * @returns {{plan: CuttingPlan | null, act: Act | null, isKept: boolean}}
 */
export function planShown({ planning, view, record }) {
  const found = isOfBefore(planning, record) ? null : planning?.found;
  if (found) return { plan: found.plan, act: found.act, isKept: false };
  return { plan: view?.plan ?? null, act: null, isKept: Boolean(view?.plan) };
}
