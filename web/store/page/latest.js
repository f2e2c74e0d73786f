/**
 * Ask the core, but only about the latest text: while one question is out, newer ones wait and the
 * newest wins. So a fast thumb never queues up stale work.
 */
export function latest(ask) {
  let out = false;
  let waiting = null;

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

  return (message, onAnswer) => {
    if (out) waiting = [message, onAnswer];
    else send(message, onAnswer);
  };
}
