/** The page's side of the core: questions in order, whatever happens to the worker. */

import { afterAnswer } from "./idle-work.js";
import { oneWorker } from "./one-worker.js";
import { openQuestions } from "./questions.js";
import { dropSnapshot } from "./snapshot/snapshot-store.js";
import { isInReach, networkMayBeBack } from "./start/network.js";
import { LOST as NETWORK_LOST } from "./start/progress.js";

/** @import { Ask } from "./contract.d.ts" */
/** @import { Core, CoreState } from "./core.d.ts" */
/** @import { Send } from "./questions.js" */

const OUTDATED = "This browser is too old for Sawside. Update it and try again.";
const BROKEN = "Sawside didn’t start. Try again. If that doesn’t work, close and reopen it, or update your browser.";
const STARTS = 3;

/**
 * Start the core. `ask(message)` resolves with the answer, in the order asked, and never rejects;
 * `state()` is {phase, way, step, loaded, total, message?, again?}, and `onState` hears of every
 * change, never before this function has returned; `again()` tries once more after a failure. The
 * phase is "starting" until every question is answered at once, which the first one is before;
 * `whole` resolves the first time that it no longer is.
 * @param {{onState(now: CoreState): void}} options
 * @returns {Core}
 */
export function startCore({ onState }) {
  /** @type {CoreState} */
  let state = { phase: "starting", way: null, step: "Starting up", loaded: 0, total: 0 };
  const questions = openQuestions();
  let starts = 0;
  /** @type {() => void} */
  let isWhole = () => {};
  /** @type {Promise<void>} */
  const whole = new Promise((resolve) => {
    isWhole = resolve;
  });
  /** @type {{question: Send} | null} the one that takes questions */
  let worker = null;

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
        worker = begun;
        questions.sendTo(begun.question);
        // Behind what waits, the first answer among it.
        begun.fetchRest();
      },
      onWhole() {
        change({ phase: "ready", step: "Ready" });
        isWhole();
        afterAnswer.whole(begun, state.way);
      },
      onAnswer: (id, text) => questions.answered(id, JSON.parse(text)) && answered(),
      onGone: replace,
    });
  }

  function answered() {
    starts = 0;
    afterAnswer.answered(state.way);
  }

  async function replace() {
    const wasReady = state.phase === "ready";
    worker = null;
    change({ phase: "starting" });
    // One that was ready has most likely died of the question it was busy with.
    if (wasReady && questions.diedOfOldest()) answered();
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

  function again() {
    starts = 0;
    if (state.phase === "failed") begin({ mayRestore: true });
  }

  if (canRun()) queueMicrotask(() => begin({ mayRestore: true }));
  else queueMicrotask(() => change({ phase: "failed", message: OUTDATED }));
  addEventListener("online", again);
  /** @type {Ask} */
  const ask = (message) => questions.add(message, (id, text) => worker?.question(id, text));
  return { ask, state: () => state, whole };
}

function canRun() {
  return typeof WebAssembly === "object" && "instantiateStreaming" in WebAssembly && "Worker" in globalThis;
}
