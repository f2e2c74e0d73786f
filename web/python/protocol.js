/**
 * The thread boundary: every message between the page and the worker that runs Python.
 *
 * Plain postMessage rather than a proxy library: the one call that matters is a question as JSON
 * text and its answer as JSON text, and what else passes is news that no call waits for.
 *
 * What a worker is for is its name, so that it begins without waiting for a message:
 *   any                   run the core: from the snapshot if there is a sound one
 *   slow                  run the core without it
 *   keep                  store a snapshot of a fresh core, and no more
 *
 * Page to worker, `ask`:
 *   question {id, text}   a message for sawside.handle_json, once the worker is ready
 *   settle   {}           in idle time: put in place what the start did without
 *
 * Worker to page, `say`:
 *   progress {way, step, loaded, total}   way "snapshot" or "slow"; bytes of this start
 *   ready    {way}
 *   answer   {id, text}
 *   kept     {}           the snapshot is stored
 *   failed   {reason}     this worker is of no more use
 */

export const ANY = "any";
export const SLOW = "slow";
export const KEEP = "keep";

export const say = (what, more) => self.postMessage({ say: what, ...more });

/** The question that a restored core must answer as it did when the snapshot was made. */
export const TRIAL_QUESTION = JSON.stringify({ do: "read", text: "7-13/16 + 3", settings: {} });
