/** A second core for long work, in a worker of its own: the first answers all else meanwhile. */
import { oneWorker } from "./one-worker.js";
import { openQuestions } from "./questions.js";

/** @import { Answered, Answers, Message, Name } from "./contract.d.ts" */
/** @import { SecondCore } from "./core.d.ts" */

/** In milliseconds: then the memory that it holds is given back. */
const REST = 60_000;

/**
 * It is started when it is first asked, from the snapshot where there is one, and ends some time after its last answer,
 * or when it is told to. `ask(message)` resolves with the answer, or with null where there is none: it could not be
 * started, died of it, or was ended. `isQuick()` says whether it answers at once, as soon as that is known.
 * @param {{rest?: number}} [options]
 * @returns {SecondCore}
 */
export function secondCore({ rest = REST } = {}) {
  /** @type {ReturnType<typeof begun> | null} */
  let now = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting;

  function end() {
    clearTimeout(resting);
    now?.end();
    now = null;
  }

  /** The one that runs, which rests from now on unless it is asked. */
  function running() {
    now ??= begun(() => (now = null));
    clearTimeout(resting);
    if (now.isIdle()) resting = setTimeout(end, rest);
    return now;
  }

  return {
    /**
     * @template {Name} N
     * @param {Message<N>} message
     * @returns {Promise<Answered<Answers[N]> | null>}
     */
    async ask(message) {
      const answered = running().ask(message);
      clearTimeout(resting);
      const answer = await answered;
      if (now) running();
      return answer;
    },
    isQuick: () => running().isQuick(),
    end,
  };
}

/**
 * One from its start to its end; what waits when it ends gets null.
 * @param {() => void} onGone
 */
function begun(onGone) {
  const questions = openQuestions();
  /** @type {ReturnType<typeof oneWorker> | null} */
  let worker = null;
  let [isReady, isWhole, isOver] = [false, false, false];
  /** @type {(isQuick: boolean) => void} */
  let tell = () => {};
  /** @type {Promise<boolean>} */
  const isQuick = new Promise((resolve) => (tell = resolve));

  function end() {
    isOver = true;
    worker?.dismiss();
    tell(false);
    questions.giveUp();
  }

  /** @param {boolean} mayRestore */
  function start(mayRestore) {
    const own = oneWorker({
      mayRestore,
      thinks: true,
      onWay: (way) => tell(way === "snapshot"),
      onProgress() {},
      onReady() {
        isReady = true;
        questions.sendTo(own.question);
        own.fetchRest();
      },
      onWhole() {
        isWhole = true;
      },
      onAnswer: (id, text) => questions.answered(id, JSON.parse(text)),
      onGone() {
        // A snapshot that is of no use is no reason to do without.
        if (mayRestore && !isReady) return start(false);
        end();
        onGone();
      },
    });
    worker = own;
  }

  try {
    start(true);
  } catch {
    // This browser gives the page no second worker.
    queueMicrotask(() => {
      end();
      onGone();
    });
  }
  return {
    isQuick: async () => isWhole || isQuick,
    end,
    isIdle: questions.isEmpty,
    /** @param {object} message */
    ask: (message) =>
      isOver ? Promise.resolve(null) : questions.add(message, (id, text) => isReady && worker?.question(id, text)),
  };
}
