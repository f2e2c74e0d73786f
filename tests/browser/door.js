// Ask the browser's own core, through the worker that the page uses, and give back its bytes.

/** The answers to `texts`, messages as JSON text, in their order. */
function sawsideAsk(texts) {
  const worker = new Worker("worker.js", { type: "module" });
  const answers = [];
  return new Promise((resolve, reject) => {
    worker.onerror = reject;
    worker.onmessage = ({ data }) => {
      if (data.say === "failed") reject(new Error(data.reason));
      if (data.say === "ready") texts.forEach((text, id) => worker.postMessage({ ask: "question", id, text }));
      if (data.say === "answer") answers[data.id] = data.text;
      if (data.say === "answer" && Object.keys(answers).length === texts.length) resolve(answers);
    };
    worker.postMessage({ ask: "slow" });
  });
}
