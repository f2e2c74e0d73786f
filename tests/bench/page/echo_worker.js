// In place of the worker that runs Python: answers as it did, without working anything out.
const recorded = RECORDED;

self.onmessage = ({ data }) => {
  if (data.ask === "slow") for (const say of ["ready", "whole"]) self.postMessage({ say });
  if (data.ask === "question") self.postMessage({ say: "answer", id: data.id, text: recorded[data.text] });
};
