import { button } from "../../widgets/element.js";

/** @import { PlanBoard } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * What puts the offcuts of a board into the project's wood on hand; null where none is left, or before all of it is cut.
 * @param {App} app
 * @param {PlanBoard} board of the plan that is kept
 * @param {Record<string, string>} [look]
 */
export function saveOffcuts(app, { key, state, offcuts, saved }, look) {
  if (saved || state !== "cut" || offcuts.length === 0) return null;
  return button("Save the offcuts", () => app.project.change({ act: "save_offcuts", board: key }), look);
}
