const worker = new Worker("worker.js", { type: "module" });
worker.onmessage = async ({ data }) => {
  document.body.textContent = data;
  performance.mark("plain:first-answer");
  await navigator.serviceWorker.register("service-worker.js");
  await navigator.serviceWorker.ready;
  performance.mark("plain:can-keep");
};
