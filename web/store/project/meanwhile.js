/** @import { Document } from "../../python/contract.d.ts" */
/** @import { Kept, NotDone } from "../shapes.d.ts" */

/** @param {Kept} entry */
const typed = (entry) => JSON.stringify(entry.kind === "line" ? entry.values : entry.text);

/**
 * Refuses a correction of an entry that somebody, in another tab, corrected or deleted since it was
 * opened here, so that neither is lost without a word.
 * @param {Document} document the project as it is now
 * @param {Kept | null} was the entry as it was when the correction was begun
 * @returns {NotDone | null}
 */
export function changedMeanwhile(document, was) {
  if (!was) return null;
  const now = document.entries.find((each) => each.id === was.id);
  if (now && typed(now) === typed(was)) return null;
  const there = now && "text" in now && now.text ? `: it’s ${now.text} there` : "";
  const message = now ? `${now.name} was changed in another tab${there}.` : `${was.name} was deleted in another tab.`;
  const remedy = now
    ? "What you typed is still here. Save again to save it anyway, or leave it."
    : "Undo in that tab brings it back. What you typed is still here.";
  return { ok: false, now, error: { kind: "meanwhile", message, remedy } };
}
