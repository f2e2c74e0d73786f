/** What is said of files on their way: a sentence, and how many bytes of all are here. */

/** @import { Progress } from "../core.d.ts" */

export const LOST = "You’re offline. Loading picks up again when you’re back on";

/** In milliseconds. */
const PAUSE = 100;

/**
 * Return {tell, listener} for files that are loaded together. `onProgress({step, loaded, total})`
 * hears of what changes: of `tell(change)`, and of what `listener(name)` hears of a download.
 * @param {(now: Progress) => void} onProgress
 * @param {string} loading what is said meanwhile
 */
export function progress(onProgress, loading) {
  const now = { step: loading, loaded: 0, total: 0 };
  const lost = new Set();
  let told = 0;
  /** @param {Progress} change */
  function tell(change) {
    const { step, total } = now;
    Object.assign(now, change);
    // Bytes come far more often than anybody sees a number change.
    if (now.step === step && now.total === total && performance.now() - told < PAUSE) return;
    told = performance.now();
    onProgress(now);
  }
  const step = () => (lost.size ? LOST : loading);
  const listener = (name) => ({
    onBytes(count) {
      lost.delete(name);
      tell({ step: step(), loaded: now.loaded + count });
    },
    onLost() {
      lost.add(name);
      tell({ step: step() });
    },
  });
  return { tell, listener };
}
