import { isUnkept } from "../../store/project/draft.js";
import { present } from "../../widgets/element.js";

/** @import { Entry } from "../../python/contract.d.ts" */
/** @import { State } from "../../store/shapes.d.ts" */

/** @typedef {{key: string, title: string, entries: Entry[]}} Group entries of one kind, in the order of the project */

/** @type {[string, string][]} */
const TITLES = [
  ["readings", "Readings"],
  ["answers", "Answers"],
  ["pieces", "Pieces"],
  ["notes", "Notes"],
];

/**
 * What the project holds by what it is: those with nothing in them are left out.
 * @param {State} state
 * @returns {Group[]}
 */
export function groupsOf({ view, record, described }) {
  const cut = new Set(view?.pieces.map(({ entry }) => entry));
  const making = new Set(described?.reckoners.filter((each) => each.makes_parts).map(({ key }) => key));
  const questions = new Map(record?.document.entries.map((kept) => [kept.id, "reckoner" in kept ? kept.reckoner : ""]));

  /** @param {Entry} entry */
  function groupOf({ id, kind, ok }) {
    if (kind !== "line") return `${kind}s`;
    // One that has no answer now makes no piece, and is still where it was.
    return cut.has(id) || (!ok && making.has(questions.get(id) ?? "")) ? "pieces" : "answers";
  }

  return present(
    TITLES.map(([key, title]) => {
      const entries = (view?.entries ?? []).filter((entry) => groupOf(entry) === key);
      return entries.length ? { key, title, entries } : null;
    }),
  );
}

/**
 * Which groups are folded on this device. One in which something is wrong, not saved, or not as it was when it was
 * folded, is open.
 * @param {{get(): State, set(patch: Partial<State>): void}} state
 */
export function folding(state) {
  const keyOf = (/** @type {Group} */ { key }) => `${state.get().record?.id}/${key}`;
  return {
    /** @param {Group} group */
    isOpen(group) {
      const needsALook = ({ error, id }) => Boolean(error) || isUnkept(state.get(), id);
      return group.entries.some(needsALook) || state.get().folded[keyOf(group)] !== asItIs(group);
    },
    /**
     * @param {Group} group
     * @param {boolean} isOpen
     */
    fold(group, isOpen) {
      const { [keyOf(group)]: _, ...others } = state.get().folded;
      state.set({ folded: isOpen ? others : { ...others, [keyOf(group)]: asItIs(group) } });
    },
  };
}

const BITS = 32;
const PRIME = 31;

/**
 * What a group says, as a number: another one says something else.
 * @param {Group} group
 */
function asItIs({ entries }) {
  const said = entries.map(({ id, name, headline, summary, text }) => [id, name, headline?.text, summary, text]);
  return [...JSON.stringify(said)].reduce((sum, sign) => (sum * PRIME + (sign.codePointAt(0) ?? 0)) % 2 ** BITS, 7);
}
