const worker = new Worker("worker.js", { type: "module" });
worker.onmessage = ({ data }) => {
  document.body.textContent = data;
  performance.mark("plain:first-answer");
};
