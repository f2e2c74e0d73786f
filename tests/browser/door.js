// Ask the browser's own core, through the worker that the page uses, and give back its bytes.

/** The answers to `texts`, messages as JSON text, as they come. */
function sawsideAsk(texts) {
  const worker = new Worker("worker.js", { type: "module" });
  const answers = [];
  return new Promise((resolve, reject) => {
    worker.onerror = reject;
    worker.onmessage = ({ data }) => {
      if (data.say === "failed") reject(new Error(data.reason));
      if (data.say === "ready") texts.forEach((text, id) => worker.postMessage({ ask: "question", id, text }));
      if (data.say === "answer" && answers.push(data.text) === texts.length) resolve(answers);
    };
    worker.postMessage({ ask: "slow" });
  });
}
