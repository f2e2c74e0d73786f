// In place of the worker that runs Python: answers as it did, without working anything out.
const recorded = RECORDED;

self.postMessage({ say: "progress", way: "slow", step: "", loaded: 0, total: 0 });
self.postMessage({ say: "ready", way: "slow" });
self.onmessage = ({ data }) => {
  if (data.ask === "question") self.postMessage({ say: "answer", id: data.id, text: recorded[data.text] });
};
