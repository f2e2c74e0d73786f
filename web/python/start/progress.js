/** What is said of files on their way: a sentence, and how many bytes of all are here. */

/** @import { Progress } from "../core.d.ts" */

export const LOST = "You’re offline. Loading picks up again when you’re back on";

/**
 * Return {tell, listener} for files that are loaded together. `onProgress({step, loaded, total})`
 * hears of every change: of `tell(change)`, and of what `listener(name)` hears of a download.
 * @param {(now: Progress) => void} onProgress
 * @param {string} loading what is said meanwhile
 */
export function progress(onProgress, loading) {
  const now = { step: loading, loaded: 0, total: 0 };
  const lost = new Set();
  /** @param {Progress} change */
  const tell = (change) => onProgress(Object.assign(now, change));
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
