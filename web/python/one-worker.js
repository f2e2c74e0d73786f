/** One worker that runs the core, from its start to its end, with a limit on every silence. */
import { newWorker } from "./protocol.js";
import { snapshotAhead } from "./snapshot/snapshot-ahead.js";

// Far beyond what the slowest phone takes; a start that hangs says nothing of it.
const LIMITS = { snapshot: 10_000, slow: 90_000, answer: 20_000 };
// A page that was asleep finds its timers run out before it finds what the worker has sent.
const GRACE = 1000;

/**
 * Start a worker, from the snapshot if `mayRestore` and there is one. `onWay(way)` says how,
 * `onReady()` that it takes questions, `onWhole()` that none of them waits for anything any more,
 * `onGone()` that it is of no more use, once.
 */
export function oneWorker({ mayRestore, onWay, onProgress, onReady, onWhole, onAnswer, onGone }) {
  const worker = newWorker();
  const busy = new Set();
  /** @type {Promise<void> | null} */
  let sound = null;
  let timer;
  let gone = false;

  function expectWord(limit) {
    clearTimeout(timer);
    timer = setTimeout(() => {
      timer = setTimeout(end, GRACE);
    }, limit);
  }

  function end() {
    clearTimeout(timer);
    worker.terminate();
    if (!gone) onGone();
    gone = true;
  }

  async function start() {
    // Without storage there is no snapshot to be found, and all else still works.
    const found = mayRestore ? await snapshotAhead().catch(() => null) : null;
    const way = found ? "snapshot" : "slow";
    expectWord(LIMITS[way]);
    onWay(way);
    if (!found) return worker.postMessage({ ask: "slow" });
    sound = found.sound;
    worker.postMessage({ ask: "restore", facts: found.facts });
    const code = found.code.then((compiled) => worker.postMessage({ ask: "code", code: compiled }));
    const memory = found.pages.then((pages) => worker.postMessage({ ask: "memory", pages }, [pages]));
    await Promise.all([code, memory]);
  }

  const heard = {
    progress(now) {
      expectWord(LIMITS.slow);
      onProgress(now);
    },
    async ready() {
      clearTimeout(timer);
      // Nothing is asked of a memory that is not the one that was kept.
      await sound;
      if (!gone) onReady();
    },
    async whole() {
      await sound;
      if (!gone) onWhole();
    },
    answer({ id, text }) {
      busy.delete(id);
      clearTimeout(timer);
      if (busy.size) expectWord(LIMITS.answer);
      onAnswer(id, text);
    },
    failed: end,
  };
  worker.onmessage = ({ data: { say, ...news } }) => !gone && Promise.resolve(heard[say](news)).catch(end);
  worker.onerror = end;
  start().catch(end);

  return {
    question(id, text) {
      if (!busy.size) expectWord(LIMITS.answer);
      busy.add(id);
      worker.postMessage({ ask: "question", id, text });
    },
    settle: () => worker.postMessage({ ask: "settle" }),
  };
}
