/** What of a project is to be filled in, in its order. */

/** @import { Entry } from "../../python/contract.d.ts" */
/** @import { Kept, State } from "../../store/shapes.d.ts" */

/** @typedef {"filled" | "next" | "fill" | "waits"} StepState */
/** @typedef {{entry: Entry, state: StepState, leadsTo: Entry, waitsFor: string}} Step */

/** @param {Entry} entry */
const isNow = ({ to_fill: left }) => left?.state === "fill" || left?.state === "check";

/**
 * The lines and readings that hang together with one that is to be filled in, in the order of the project; none where
 * all is filled in.
 * @param {Entry[]} entries
 * @returns {Step[]}
 */
export function stepsOf(entries) {
  const all = new Map(entries.map((entry) => [entry.id, entry]));
  const found = new Set(entries.filter((each) => each.to_fill).map(({ id }) => id));
  for (const id of found)
    for (const each of [...(all.get(id)?.uses ?? []), ...(all.get(id)?.used_by ?? [])]) found.add(each);
  const steps = entries.filter(({ id }) => found.has(id));
  const next = steps.find(isNow);
  return steps.map((entry) => ({
    entry,
    state: stateOf(entry, next),
    leadsTo: firstToFill(entry, all),
    waitsFor: waitsFor(entry, all),
  }));
}

/**
 * @param {Entry} entry
 * @param {Entry | undefined} next
 * @returns {StepState}
 */
function stateOf(entry, next) {
  if (!entry.to_fill) return "filled";
  if (entry === next) return "next";
  return isNow(entry) ? "fill" : "waits";
}

/**
 * What an entry waits for in the end: the first of it that can be filled in now; itself where it can.
 * @param {Entry} entry
 * @param {Map<string, Entry>} all
 */
export function firstToFill(entry, all) {
  /** @type {Entry | undefined} */
  let now = entry;
  const seen = new Set();
  while (now && now.to_fill?.state === "waits" && !seen.has(now)) {
    seen.add(now);
    now = all.get(now.to_fill.waits_for[0]);
  }
  return now ?? entry;
}

/**
 * @param {Entry} entry
 * @param {Map<string, Entry>} all
 */
const waitsFor = ({ to_fill: left }, all) => all.get(left?.waits_for[0] ?? "")?.name ?? "";

/**
 * What is said of an entry that is to be filled in; "" of one that is.
 * @param {Entry} entry
 */
export function leftToFill({ kind, to_fill: left, waits }) {
  if (!left) return "";
  if (kind === "reading" && left.state === "fill") return "To fill in";
  if (left.state === "waits") return `Waits for ${waits.map(({ name }) => name).join(", ")}`;
  const labels = left.fields.map(({ label }) => label).join(", ");
  return left.state === "fill" ? `To fill in: ${labels}` : `Goes by the usual for now. Check: ${labels}`;
}

/**
 * The first field that is to be filled in of an entry of the open project; "" where none is.
 * @param {State} state
 * @param {string | undefined} id
 */
export const firstBlank = ({ view }, id) => view?.entries.find((each) => each.id === id)?.to_fill?.fields[0]?.key ?? "";

/**
 * Whether an entry of the open project has no answer yet, for want of what is to be filled in.
 * @param {State} state
 * @param {string | undefined} id
 */
export const isToFill = ({ view }, id) => Boolean(view?.entries.find((each) => each.id === id && !each.ok)?.to_fill);

/**
 * Where an entry is filled in, or corrected.
 * @param {State} state
 * @param {Pick<Entry, "id" | "kind">} entry
 */
export function placeOf({ record }, { id, kind }) {
  const kept = record?.document.entries.find((/** @type {Kept} */ each) => each.id === id);
  return kept?.kind === "line" ? `work-out/${kept.reckoner}/${id}` : `${kind}/${id}`;
}
