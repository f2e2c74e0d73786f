import { naming } from "../../store/pad/naming.js";
import { thisMinute } from "../../store/project/when.js";

/** @import { Line, Message, Reckoner } from "../../python/contract.d.ts" */
/** @import { Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * Whether a kept line has steps: what is ticked of them goes with what is asked.
 * @param {App} app
 * @param {Line} [entry]
 */
export const hasSteps = (app, entry) =>
  Boolean(entry && app.state.get().view?.check_lists?.some((list) => list.entry === entry.id));

/**
 * How a question is asked: with the names of the project where its texts may hold one, and with what was ticked.
 * @param {App} app
 * @param {{declared: Reckoner, entry?: Line, values: Record<string, Typed>, unit: string}} asked
 * @returns {Message<"reckon">}
 */
export function messageOf(app, { declared, entry, values, unit }) {
  const { record } = app.state.get();
  const around = hasSteps(app, entry)
    ? { document: record?.document, id: entry?.id, now: thisMinute() || null }
    : naming(record, values, entry?.id);
  return { do: "reckon", reckoner: declared.key, values, settings: app.project.settings(), unit, ...around };
}
