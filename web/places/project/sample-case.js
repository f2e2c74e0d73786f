import { button } from "../../widgets/element.js";
import { onward } from "../go.js";
import { notice, quietly } from "../notices.js";

/** @import { App } from "../place.d.ts" */

/**
 * Begins a project with a whole case in it, each number of which can be changed from the top down.
 * @param {App} app
 */
export function sampleCase(app) {
  async function begin() {
    const { described } = app.state.get();
    if (!described) return notice("Still loading. Try again in a moment.");
    const goOn = onward();
    const answer = await quietly(app.projects.add(described.case));
    if (!answer.ok) return;
    notice("Change the readings at the top to yours. Everything below follows.");
    goOn("project");
  }
  return button("Start with a sample case", begin);
}
