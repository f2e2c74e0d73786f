/** @typedef {(id: number, text: string) => void} Send gives a question to a worker */

const LOST = {
  ok: false,
  error: {
    kind: "internal",
    field: null,
    at: null,
    message: "Couldn’t work that out. Nothing you typed is lost.",
    remedy: "Change a value and try again.",
  },
};
const ASKED_TWICE = 2;

/** The questions that wait for their answers, in the order asked. */
export function openQuestions() {
  /** @type {Map<number, {text: string, resolve(answer: any): void, tries: number}>} */
  const waiting = new Map();
  let asked = 0;

  /**
   * @param {number} id
   * @param {unknown} answer
   * @returns whether it was waited for
   */
  function answered(id, answer) {
    const question = waiting.get(id);
    waiting.delete(id);
    question?.resolve(answer);
    return Boolean(question);
  }

  return {
    /**
     * @param {object} message
     * @param {Send} send
     * @returns {Promise<any>} the answer
     */
    add(message, send) {
      const id = ++asked;
      const text = JSON.stringify(message);
      return new Promise((resolve) => {
        waiting.set(id, { text, resolve, tries: 0 });
        send(id, text);
      });
    },
    /**
     * All that wait go to a worker that is new.
     * @param {Send} send
     */
    sendTo(send) {
      for (const [id, { text }] of waiting) send(id, text);
    },
    answered,
    /** None of them gets an answer any more: each is answered with null. */
    giveUp() {
      for (const id of [...waiting.keys()]) answered(id, null);
    },
    isEmpty: () => waiting.size === 0,
    /**
     * The oldest was most likely what a worker died of: it is tried once more, and then given up.
     * @returns whether it was given up
     */
    diedOfOldest() {
      const [oldest] = waiting;
      if (!oldest) return false;
      const [id, question] = oldest;
      question.tries += 1;
      return question.tries >= ASKED_TWICE && answered(id, LOST);
    },
  };
}
