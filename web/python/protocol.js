/**
 * The thread boundary: every message between the page and a worker that runs Python.
 *
 * Plain postMessage rather than a proxy library: the one call that matters is a question as JSON
 * text and its answer as JSON text, and what else passes is news that no call waits for.
 *
 * Page to worker, `ask`:
 *   slow     {}            start the core the slow way
 *   restore  {facts}       start it from a snapshot, of which the next two bring the rest
 *   code     {code}        the runtime's code, compiled
 *   memory   {pages}       the packed pages, handed over
 *   question {id, text}    once it is ready: a message for sawside.handle_json; answered in order
 *   rest     {}            fetch what the first answer did without, in its turn
 *   settle   {}            in idle time: put in place what the start did without
 *   keep     {}            to a worker of its own: store a snapshot of a fresh core, and no more
 *
 * Worker to page, `say`:
 *   progress {step, loaded, total}   of a slow start, in bytes
 *   ready    {}            it takes questions; after a slow start only the first is answered at once
 *   whole    {}            nothing is left to wait for
 *   answer   {id, text}
 *   kept     {}            the snapshot is stored
 *   failed   {reason}      this worker is of no more use
 */

export const newWorker = () => new Worker(new URL("worker.js", import.meta.url), { type: "module" });

/**
 * @param {string} what
 * @param {object} [more]
 */
export const say = (what, more) => self.postMessage({ say: what, ...more });

/**
 * What the page asks first of all where nothing is kept yet. The build finds out which files its
 * answer needs; a first visit loads those, and just this text is answered before the rest is here.
 */
export const FIRST_QUESTION = JSON.stringify({ do: "strip", settings: {} });

/** The question that a restored core must answer as it did when the snapshot was made. */
export const TRIAL_QUESTION = JSON.stringify({ do: "read", text: "7-13/16 + 3", settings: {} });
