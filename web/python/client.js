/** The page's side of the core: questions in order, whatever happens to the worker. */

import { afterAnswer } from "./idle-work.js";
import { oneWorker } from "./one-worker.js";
import { dropSnapshot } from "./snapshot/snapshot-store.js";
import { isInReach, networkMayBeBack } from "./start/network.js";
import { LOST as NETWORK_LOST } from "./start/progress.js";

/** @import { Ask } from "./contract.d.ts" */
/** @import { Core, CoreState } from "./core.d.ts" */

const OUTDATED = "This browser is too old for the arithmetic. Update it, then open Sawside again.";
const BROKEN =
  "The arithmetic did not start. If trying again does not help, close Sawside and open it again, or update the browser.";
const LOST = {
  ok: false,
  error: {
    kind: "internal",
    field: null,
    at: null,
    message: "This could not be worked out. Nothing you typed is lost.",
    remedy: "Change a value and try again.",
  },
};
const STARTS = 3;
const ASKED_TWICE = 2;

/**
 * Start the core. `ask(message)` resolves with the answer, in the order asked, and never rejects;
 * `state()` is {phase, way, step, loaded, total, message?, again?}, and `onState` hears of every
 * change, never before this function has returned; `again()` tries once more after a failure. The
 * phase is "starting" until every question is answered at once, which the first one is before.
 * @param {{onState(now: CoreState): void}} options
 * @returns {Core}
 */
export function startCore({ onState }) {
  /** @type {CoreState} */
  let state = { phase: "starting", way: null, step: "Waking the arithmetic", loaded: 0, total: 0 };
  /** @type {Map<number, {text: string, resolve(answer: any): void, tries?: number}>} */
  const waiting = new Map();
  let asked = 0;
  let starts = 0;
  /** @type {ReturnType<typeof oneWorker> | null} */
  let worker = null;
  let takesQuestions = false;

  /** @param {Partial<CoreState>} more */
  function change(more) {
    state = { ...state, ...more };
    onState(state);
  }

  /** @param {{mayRestore: boolean}} how */
  function begin({ mayRestore }) {
    starts++;
    change({ phase: "starting", way: null, message: undefined, again: undefined });
    const begun = oneWorker({
      mayRestore,
      onWay: (way) => change({ way }),
      onProgress: change,
      onReady() {
        takesQuestions = true;
        for (const [id, each] of waiting) begun.question(id, each.text);
      },
      onWhole() {
        change({ phase: "ready", step: "Ready" });
        afterAnswer.whole(begun, state.way);
      },
      onAnswer: answered,
      onGone: replace,
    });
    worker = begun;
  }

  /**
   * @param {number} id
   * @param {string} text
   */
  function answered(id, text) {
    const each = waiting.get(id);
    if (!each) return;
    waiting.delete(id);
    starts = 0;
    each.resolve(JSON.parse(text));
    afterAnswer.answered(state.way);
  }

  async function replace() {
    const wasReady = state.phase === "ready";
    const [oldest] = waiting;
    takesQuestions = false;
    change({ phase: "starting" });
    // A worker that was ready has most likely died of the question it was busy with.
    if (wasReady && oldest) {
      const [id, each] = oldest;
      each.tries = (each.tries ?? 0) + 1;
      if (each.tries >= ASKED_TWICE) answered(id, JSON.stringify(LOST));
    }
    if (starts >= STARTS) return fail();
    if (state.way === "snapshot") await dropSnapshot().catch(() => {});
    begin({ mayRestore: false });
  }

  /** Where the site is out of reach another browser would do no better: it is tried again when it is back. */
  async function fail() {
    change({ phase: "failed", message: undefined, again: undefined });
    if (await isInReach()) return change({ message: BROKEN, again });
    change({ message: `${NETWORK_LOST}.`, again });
    while (state.phase === "failed" && !(await isInReach())) await networkMayBeBack();
    again();
  }

  /** @type {Ask} */
  function ask(message) {
    return new Promise((resolve) => {
      const id = ++asked;
      const text = JSON.stringify(message);
      waiting.set(id, { text, resolve });
      if (takesQuestions) worker?.question(id, text);
    });
  }

  function again() {
    starts = 0;
    if (state.phase === "failed") begin({ mayRestore: true });
  }

  if (canRun()) queueMicrotask(() => begin({ mayRestore: true }));
  else queueMicrotask(() => change({ phase: "failed", message: OUTDATED }));
  addEventListener("online", again);
  return { ask, state: () => state };
}

function canRun() {
  return typeof WebAssembly === "object" && "instantiateStreaming" in WebAssembly && "Worker" in globalThis;
}
