/** @import { State, StateKeeper } from "../shapes.d.ts" */

/** What is written to the store as it changes, so that the page opens as it was left. */
const KEPT = [
  "pad",
  "recent",
  "pinned",
  "strip",
  "openProject",
  "view",
  "print",
  "saw",
  "hand",
  "sure",
  "backups",
  "lastOpened",
  "folded",
  "dueTold",
  "cautions",
];
const DRAFT = "draft:";
const isKept = (key) => KEPT.includes(key) || key.startsWith(DRAFT);

/**
 * Where the text typed into a question waits: a key of its own, so that a key press writes little.
 * @param {string} slot
 * @returns {`draft:${string}`}
 */
export const draftKey = (slot) => `${DRAFT}${slot}`;

/**
 * One state object for the page.
 * @param {Partial<State>} start what the store held
 * @param {(key: string, value: unknown) => Promise<unknown>} keep writes one key
 * @param {(error: Error) => void} onRefused called when the store refuses to write
 * @returns {StateKeeper}
 */
export function createState(start, keep, onRefused) {
  /** @type {State} */
  let now = {
    pad: { text: "", answer: null },
    described: null,
    recent: [],
    pinned: [],
    strip: null,
    tally: null,
    entering: [],
    entered: null,
    openProject: null,
    view: null,
    core: null,
    offline: null,
    record: null,
    saw: { order: "set-up", light: "" },
    hand: { side: "right" },
    sure: { tape: "" },
    backups: {},
    cautions: { day: "", seen: [] },
    lastOpened: {},
    folded: {},
    dueTold: {},
    ...start,
  };
  const listeners = new Set();
  return {
    get: () => now,
    /** Write all of it once more, as after the store was erased. */
    keepAgain() {
      for (const key of Object.keys(now).filter(isKept)) keep(key, now[key]).catch(onRefused);
    },
    set(patch) {
      now = { ...now, ...patch };
      for (const key of Object.keys(patch).filter(isKept)) keep(key, patch[key]).catch(onRefused);
      for (const listener of [...listeners]) listener(Object.keys(patch));
    },
    /** @returns a function that ends the subscription */
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
