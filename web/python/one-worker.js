/** One worker that runs the core, from its start to its end, with a limit on every silence. */
import { newWorker } from "./protocol.js";
import { snapshotAhead } from "./snapshot/snapshot-ahead.js";

/** @import { Progress, Way } from "./core.d.ts" */

/** @typedef {NonNullable<Awaited<ReturnType<typeof snapshotAhead>>>} Found */

// Far beyond what the slowest phone takes; a start that hangs says nothing of it.
const LIMITS = { snapshot: 10_000, slow: 90_000, answer: 20_000 };
// A page that was asleep finds its timers run out before it finds what the worker has sent.
const GRACE = 1000;

/**
 * Start a worker, from the snapshot if `mayRestore` and there is one. `onWay(way)` says how,
 * `onReady()` that it takes questions, `onWhole()` that none of them waits for anything any more,
 * `onGone()` that it is of no more use, once. One that `thinks` may be silent over a question.
 * @param {object} options
 * @param {boolean} options.mayRestore
 * @param {boolean} [options.thinks]
 * @param {(way: Way) => void} options.onWay
 * @param {(now: Progress) => void} options.onProgress
 * @param {() => void} options.onReady
 * @param {() => void} options.onWhole
 * @param {(id: number, text: string) => void} options.onAnswer
 * @param {() => void} options.onGone
 */
export function oneWorker({ mayRestore, thinks = false, onWay, onProgress, onReady, onWhole, onAnswer, onGone }) {
  const worker = newWorker();
  const silence = silenceOf(end);
  const busy = new Set();
  let sound = Promise.resolve();
  let gone = false;

  function dismiss() {
    silence.isOver();
    worker.terminate();
    gone = true;
  }

  function end() {
    const wasGone = gone;
    dismiss();
    if (!wasGone) onGone();
  }

  const waitForAnswer = () => thinks || silence.mayLast(LIMITS.answer);

  const heard = {
    progress(/** @type {Progress} */ now) {
      silence.mayLast(LIMITS.slow);
      onProgress(now);
    },
    async ready() {
      silence.isOver();
      // Nothing is asked of a memory that is not the one that was kept.
      await sound;
      if (!gone) onReady();
    },
    async whole() {
      // What was said of its loading holds for that alone.
      if (thinks || !busy.size) silence.isOver();
      await sound;
      if (!gone) onWhole();
    },
    answer(/** @type {{id: number, text: string}} */ { id, text }) {
      busy.delete(id);
      silence.isOver();
      if (busy.size) waitForAnswer();
      onAnswer(id, text);
    },
    failed: end,
  };
  worker.onmessage = ({ data: { say, ...news } }) => !gone && Promise.resolve(heard[say](news)).catch(end);
  worker.onerror = end;

  async function start() {
    // Without storage there is no snapshot to be found, and all else still works.
    const found = mayRestore ? await snapshotAhead().catch(() => null) : null;
    const way = found ? "snapshot" : "slow";
    silence.mayLast(LIMITS[way]);
    onWay(way);
    if (!found) return worker.postMessage({ ask: "slow" });
    sound = found.sound;
    await restore(worker, found);
  }
  start().catch(end);

  return {
    /**
     * @param {number} id
     * @param {string} text
     */
    question(id, text) {
      if (!busy.size) waitForAnswer();
      busy.add(id);
      worker.postMessage({ ask: "question", id, text });
    },
    fetchRest: () => worker.postMessage({ ask: "rest" }),
    settle: () => worker.postMessage({ ask: "settle" }),
    /** It is not wanted any more: nothing is heard of it again. */
    dismiss,
  };
}

/**
 * A limit on a silence.
 * @param {() => void} onTooLong
 */
function silenceOf(onTooLong) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  const isOver = () => clearTimeout(timer);
  return {
    isOver,
    /** @param {number} limit in milliseconds */
    mayLast(limit) {
      isOver();
      timer = setTimeout(() => {
        timer = setTimeout(onTooLong, GRACE);
      }, limit);
    },
  };
}

/**
 * Hand over to a worker what is found of a snapshot, each part as it is here.
 * @param {Worker} worker
 * @param {Found} found
 */
async function restore(worker, found) {
  worker.postMessage({ ask: "restore", facts: found.facts });
  const code = found.code.then((compiled) => worker.postMessage({ ask: "code", code: compiled }));
  const memory = found.pages.then((pages) => worker.postMessage({ ask: "memory", pages }, [pages]));
  await Promise.all([code, memory]);
}
