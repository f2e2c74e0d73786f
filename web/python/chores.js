/** What is done in idle time once the first question has been answered. */
import { newWorker } from "./protocol.js";

export const FIRST_ANSWER = "sawside:first-answer";
export const SNAPSHOT_KEPT = "sawside:snapshot-kept";
const PAUSE = 1500;
const LONGEST_WAIT = 60_000;

let answers = 0;
let ready = null;

export const afterAnswer = {
  ready(worker, way) {
    ready = { worker, way };
    if (answers) chores();
  },
  answered() {
    if (answers++) return;
    performance.mark(FIRST_ANSWER, { detail: { way: ready.way } });
    chores();
  },
};

async function chores() {
  const { worker, way } = ready;
  await idle();
  // Once all is kept for use without network, nothing is loaded twice.
  if (way === "slow") await Promise.race([navigator.serviceWorker?.ready, after(LONGEST_WAIT)]);
  if (ready.worker !== worker) return;
  worker.settle();
  if (way === "slow" && "caches" in globalThis) keepSnapshot();
}

function keepSnapshot() {
  const maker = newWorker();
  maker.onmessage = ({ data }) => {
    if (data.say === "kept") performance.mark(SNAPSHOT_KEPT);
    maker.terminate();
  };
  maker.onerror = () => maker.terminate();
  maker.postMessage({ ask: "keep" });
}

const after = (time) => new Promise((resolve) => setTimeout(resolve, time));

async function idle() {
  await after(PAUSE);
  // Safari has no requestIdleCallback.
  if ("requestIdleCallback" in globalThis)
    await new Promise((resolve) => requestIdleCallback(resolve, { timeout: PAUSE }));
}
