/**
 * Ask the core, but only about the latest text: while one question is out, newer ones wait and the
 * newest wins. So a fast thumb never queues up stale work.
 * @template Message, Answer
 * @param {(message: Message) => Promise<Answer>} ask
 */
export function latest(ask) {
  let out = false;
  /** @type {[Message, (answer: Answer) => void] | null} */
  let waiting = null;

  /**
   * @param {Message} message
   * @param {(answer: Answer) => void} onAnswer
   */
  async function send(message, onAnswer) {
    out = true;
    const answer = await ask(message);
    out = false;
    if (waiting) {
      const [next, then] = waiting;
      waiting = null;
      send(next, then);
      return;
    }
    onAnswer(answer);
  }

  /** @type {(message: Message, onAnswer: (answer: Answer) => void) => void} */
  return (message, onAnswer) => {
    if (out) waiting = [message, onAnswer];
    else send(message, onAnswer);
  };
}
