import { draftKey } from "../page/state.js";
import { correctionKey } from "./draft.js";

/** @import { Ask, Line } from "../../python/contract.d.ts" */
/** @import { Database, Draft, ProjectRecord, StateKeeper } from "../shapes.d.ts" */

/**
 * What was typed with an earlier version into a question that is part of another one now waits in the form of that one.
 * @param {{state: StateKeeper, ask: Ask}} page
 * @param {{slot: `draft:${string}`, reckoner: string, to(reckoner: string): `draft:${string}`}[]} typed
 */
async function bringUp({ state, ask }, typed) {
  const draftOf = (/** @type {`draft:${string}`} */ slot) => /** @type {Draft | undefined} */ (state.get()[slot]);
  const waiting = typed.filter(({ slot }) => draftOf(slot)?.values);
  if (waiting.length === 0) return;
  const forms = waiting.map(({ slot, reckoner }) => ({ reckoner, values: draftOf(slot)?.values ?? {} }));
  const today = await ask({ do: "today", forms });
  if (!today.ok) return;
  waiting.forEach(({ slot, reckoner, to }, at) => {
    const form = today.forms[at];
    if (form.reckoner === reckoner) return;
    const there = to(form.reckoner);
    const { unit } = draftOf(slot) ?? {};
    if (there !== slot && draftOf(there)?.values) return;
    state.set({ [slot]: undefined });
    state.set({ [there]: { values: form.values, unit, changed: true } });
  });
}

/**
 * What was typed into questions that are no more: it is brought up before those that there are can be opened.
 * @param {{state: StateKeeper, ask: Ask}} page
 * @param {{key: string}[]} questions those that there are
 */
export function draftsOfToday({ state, ask }, questions) {
  const known = new Set(questions.map(({ key }) => key));
  const slots = Object.keys(state.get()).filter((key) => key.startsWith(draftKey("")) && !key.includes("/"));
  const gone = slots.map((slot) => slot.slice(draftKey("").length)).filter((key) => !known.has(key));
  return bringUp(
    { state, ask },
    gone.map((key) => ({ slot: draftKey(key), reckoner: key, to: draftKey })),
  );
}

/**
 * A record of an earlier version as this one keeps it, with what was typed over its lines; null where the store has
 * another one by now.
 * @param {{database: Database, state: StateKeeper, ask: Ask}} page
 * @param {ProjectRecord} record
 */
export async function recordOfToday({ database, state, ask }, record) {
  const today = await ask({ do: "today", document: record.document });
  if (!today.ok || !today.document) return null;
  const lines = record.document.entries.filter((entry) => entry.kind === "line");
  const kept = await database.keepProject({ ...record, document: today.document });
  const slotOf = (/** @type {string} */ id) => correctionKey(record, id);
  const typed = lines.map(({ id, reckoner }) => ({ slot: slotOf(id), reckoner, to: () => slotOf(id) }));
  await bringUp({ state, ask }, typed);
  return kept;
}
