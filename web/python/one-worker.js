/** One worker from its start to its end, with a limit on every silence. */

// Far beyond what the slowest phone takes; a start that hangs says nothing of it.
const LIMITS = { snapshot: 10_000, slow: 90_000, answer: 20_000 };
// A page that was asleep finds its timers run out before it finds what the worker has sent.
const GRACE = 1000;

export const newWorker = (name) => new Worker(new URL("worker.js", import.meta.url), { type: "module", name });

/** Start a worker of that name; `onGone()` is called once, when it is of no more use. */
export function oneWorker(name, { onProgress, onReady, onAnswer, onGone }) {
  const worker = newWorker(name);
  const busy = new Set();
  let timer;

  function expectWord(limit) {
    clearTimeout(timer);
    timer = setTimeout(() => {
      timer = setTimeout(end, GRACE);
    }, limit);
  }

  function end() {
    clearTimeout(timer);
    worker.onmessage = null;
    worker.onerror = null;
    worker.terminate();
    onGone();
  }

  const heard = {
    progress({ way: taken, step, loaded, total }) {
      expectWord(LIMITS[taken]);
      onProgress({ way: taken, step, loaded, total });
    },
    ready({ way: taken }) {
      clearTimeout(timer);
      onReady(taken);
    },
    answer({ id, text }) {
      busy.delete(id);
      clearTimeout(timer);
      if (busy.size) expectWord(LIMITS.answer);
      onAnswer(id, text);
    },
    failed: end,
  };
  worker.onmessage = ({ data }) => heard[data.say](data);
  worker.onerror = end;
  expectWord(LIMITS.slow);

  return {
    question(id, text) {
      if (!busy.size) expectWord(LIMITS.answer);
      busy.add(id);
      worker.postMessage({ ask: "question", id, text });
    },
    settle: () => worker.postMessage({ ask: "settle" }),
  };
}
