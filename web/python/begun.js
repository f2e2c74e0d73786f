/** What takes longest of a start, begun as soon as this is read: the core, and what describes its questions. */
import { startCore } from "./client.js";
import { readDescription } from "./start/description.js";

/** @import { CoreState } from "./core.d.ts" */

/** What is told before there is anything to do with it needs nothing done. */
let hear = (/** @type {CoreState} */ _now) => {};

export const core = startCore({ onState: (now) => hear(now) });

/** Hear of every change of the core from now on. */
export function hearCore(/** @type {(now: CoreState) => void} */ listener) {
  hear = listener;
}

export const description = readDescription();
