import { button } from "../../widgets/element.js";
import { onward } from "../go.js";
import { quietly } from "../notices.js";

/** @import { App } from "../place.d.ts" */

const NAME = "New case";

/**
 * Begins a project with a case to fill in: its questions in order, each taking what it can from the one above.
 * @param {App} app
 * @param {Record<string, string>} [look]
 */
export function newCase(app, look) {
  async function begin() {
    const goOn = onward();
    const begun = await quietly(app.projects.begin(NAME));
    if (!begun.ok) return;
    const answer = await quietly(app.projects.change({ act: "new_case" }));
    if (answer.ok) goOn("project");
  }
  return button(NAME, begin, look);
}

/**
 * Adds one to the project that is open.
 * @param {App} app
 */
export const addCase = (app) => button("Add a case", () => app.project.change({ act: "new_case" }));
