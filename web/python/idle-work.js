/** What is done in idle time once a question has been answered and no other waits for a file. */
import { newWorker } from "./protocol.js";
import { canKeepSnapshot } from "./snapshot/snapshot-store.js";

export const FIRST_ANSWER = "sawside:first-answer";
export const SNAPSHOT_KEPT = "sawside:snapshot-kept";
const PAUSE = 1500;
const LONGEST_WAIT = 60_000;

/** @import { Way } from "./core.d.ts" */

/** @typedef {{worker: {settle(): void}, way: Way | null}} Whole */

let answers = 0;
/** @type {Whole | null} */
let whole = null;

export const afterAnswer = {
  /**
   * @param {Whole["worker"]} worker
   * @param {Way | null} way
   */
  whole(worker, way) {
    whole = { worker, way };
    if (answers) idleWork(whole);
  },
  /** @param {Way | null} way */
  answered(way) {
    if (answers++) return;
    performance.mark(FIRST_ANSWER, { detail: { way } });
    if (whole) idleWork(whole);
  },
};

/** @param {Whole} now */
async function idleWork({ worker, way }) {
  await idle();
  // Once all is kept for use without network, nothing is loaded twice.
  if (way === "slow") await Promise.race([allKept(), after(LONGEST_WAIT)]);
  if (whole?.worker !== worker) return;
  worker.settle();
  if (way === "slow" && (await canKeepSnapshot())) keepSnapshot();
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

/** Resolves when a service worker has kept all files, or when there can be none. */
async function allKept() {
  await Promise.resolve()
    .then(() => navigator.serviceWorker?.ready)
    .catch(() => {});
}

const after = (time) => new Promise((resolve) => setTimeout(resolve, time));

async function idle() {
  await after(PAUSE);
  // Safari has no requestIdleCallback.
  if ("requestIdleCallback" in globalThis)
    await new Promise((resolve) => requestIdleCallback(resolve, { timeout: PAUSE }));
}
