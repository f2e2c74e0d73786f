import { download } from "../../widgets/device/give-file.js";
import { shareText } from "../../widgets/device/share-text.js";
import { button } from "../../widgets/element.js";
import { copy, quietly } from "../notices.js";

/** @import { CuttingPlan } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

const TITLE = "Buy list";

/**
 * The buy list for somebody else, or for another program; a table is made of the plan that the project has.
 * @param {App} app
 * @param {CuttingPlan} plan
 * @param {boolean} isKept
 */
export function buyActs(app, { text }, isKept) {
  async function share() {
    if (!(await shareText({ title: TITLE, text }))) await copy(text, "the buy list");
  }

  async function give() {
    const record = await app.projects.settled();
    if (!record) return;
    const made = await quietly(app.ask({ do: "csv", document: record.document, what: "buy" }));
    if (made.ok) download(made);
  }

  const shared = button("Share buy list", share);
  return isKept ? [shared, button("Export buy list", give)] : [shared];
}
