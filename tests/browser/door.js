// Ask the browser's own core, through the worker that the page uses, and give back its bytes.

/** A worker, and a promise of the first news of it that `says` so. */
function worker(says) {
  const begun = new Worker("worker.js", { type: "module" });
  const heard = new Promise((resolve, reject) => {
    begun.onerror = reject;
    begun.onmessage = ({ data }) => {
      if (data.say === "failed") reject(new Error(data.reason));
      if (data.say === says) resolve();
    };
  });
  return { begun, heard };
}

/** The ways of starting a worker: each resolves with one that takes questions. */
const ways = {
  async slow() {
    const { begun, heard } = worker("ready");
    begun.postMessage({ ask: "slow" });
    await heard;
    return begun;
  },

  async snapshot() {
    const maker = worker("kept");
    maker.begun.postMessage({ ask: "keep" });
    await maker.heard;
    maker.begun.terminate();
    const cache = await caches.open("python-snapshot");
    const kept = await cache.match((await cache.keys())[0]);
    const facts = JSON.parse(decodeURIComponent(kept.headers.get("X-Snapshot")));
    const { begun, heard } = worker("ready");
    begun.postMessage({ ask: "restore", facts });
    const code = await WebAssembly.compileStreaming(fetch("python/pyodide.asm.wasm"));
    begun.postMessage({ ask: "code", code });
    begun.postMessage({ ask: "memory", pages: await kept.arrayBuffer() });
    await heard;
    return begun;
  },
};

/** The answers to `texts`, messages as JSON text, as they come, of a core that was started this way. */
async function sawsideAsk(way, texts) {
  const core = await ways[way]();
  const answers = [];
  return new Promise((resolve, reject) => {
    core.onmessage = ({ data }) => {
      if (data.say === "failed") reject(new Error(data.reason));
      if (data.say === "answer" && answers.push(data.text) === texts.length) resolve(answers);
    };
    texts.forEach((text, id) => core.postMessage({ ask: "question", id, text }));
  });
}
