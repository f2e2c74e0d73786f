import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { quietly } from "../notices.js";

/** @import { App } from "../place.d.ts" */

/**
 * Keeps in the project what a line of the tally, or a sum being typed, comes to: the whole sum where it can be kept, so
 * that it goes on following the project. Where only its number can be, the dialog says so before.
 * @param {App} app
 * @param {{id: string} | {text: string}} what
 * @param {{name?: string, onKept?: (id: string) => void}} [how] `name` is the one to begin with
 */
export async function keepSum(app, what, { name, onKept } = {}) {
  const sum = await quietly(app.tally.sum(what));
  if (!sum.ok || document.querySelector("dialog[open]")) return;
  const { text, unit, said, value } = sum;
  nameDialog({
    title: `Save ${"brief" in value ? value.brief : value.text}`,
    act: "Save",
    name,
    told: said,
    async give(given) {
      const answer = await app.project.change({ act: "keep_reading", name: given, text, unit });
      if (answer.ok && answer.id) onKept?.(answer.id);
      return answer;
    },
  });
}
