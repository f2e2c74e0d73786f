import { download } from "../../widgets/device/give-file.js";
import { shareText } from "../../widgets/device/share-text.js";
import { button, present } from "../../widgets/element.js";
import { go } from "../go.js";
import { copy, quietly } from "../notices.js";

/** @import { CuttingPlan } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

const TITLE = "Buy list";

/**
 * The buy list for somebody else, on paper, or for another program; a table is made of the plan that the project has.
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
  const printed = button("Print", () => go("plan-sheet"));
  return present([shared, printed, isKept ? button("Export buy list", give) : null]);
}
