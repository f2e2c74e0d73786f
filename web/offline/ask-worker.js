/**
 * Ask a service worker and resolve with its answer.
 * @param {ServiceWorker} worker
 * @param {{ask: string}} question
 * @returns {Promise<any>}
 */
export function askWorker(worker, question) {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data);
    worker.postMessage(question, [port2]);
  });
}
