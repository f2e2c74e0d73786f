// Times every key from its press to the frame that shows its answer, and notes what was answered.
globalThis.keyTimes = [];
globalThis.answered = {};

const RealWorker = Worker;
globalThis.Worker = class extends RealWorker {
  questions = new Map();
  postMessage(message, handedOver) {
    if (message.ask === "question") this.questions.set(message.id, message.text);
    super.postMessage(message, handedOver);
  }
  set onmessage(heard) {
    super.onmessage = (event) => {
      const { say, id, text } = event.data;
      if (say === "answer") globalThis.answered[this.questions.get(id)] = text;
      heard(event);
    };
  }
};

let pressed = null;
addEventListener("keydown", ({ timeStamp }) => (pressed ??= timeStamp), true);
addEventListener("DOMContentLoaded", () => {
  /** The pad names the text that its answer is for; a question shows each answer anew. */
  const answeredNow = (changes) => {
    const input = document.querySelector("input[name=pad]");
    const output = document.querySelector("output[name=pad-answer]");
    if (input) return output?.dataset.for === input.value;
    return changes.some(({ type, target }) => type === "childList" && target.matches("output[name=result]"));
  };
  const shown = (changes) => {
    if (pressed === null || !answeredNow(changes)) return;
    const since = pressed;
    pressed = null;
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => globalThis.keyTimes.push(performance.now() - since);
      port2.postMessage(null);
    });
  };
  const watched = { subtree: true, attributes: true, attributeFilter: ["data-for"], childList: true };
  new MutationObserver(shown).observe(document.body, watched);
});
