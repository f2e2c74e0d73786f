import { isOfBefore, stampOf } from "./identity.js";

/** @import { Ask, Document } from "../../python/contract.d.ts" */
/** @import { SecondCore } from "../../python/core.d.ts" */
/** @import { Planning, ProjectRecord, StateKeeper } from "../shapes.d.ts" */

const STARTING = "Looking for a plan…";
const STOPPED = "Stopped. This is the best plan so far.";
const CHANGED = "The project changed, so the search ended. Plan again.";
const ALONE = "This is a quick plan: this device couldn’t look for a better one.";

const NOTHING = { found: null, error: null, isRunning: false };

/**
 * Looks for a cutting plan of the open project with a core of its own, so that the first one answers all else meanwhile:
 * there is an answer at once, and it gets better until no better one is to be found or it is stopped; what was found
 * stays in the state's `planning` until the project is changed.
 * @param {{state: StateKeeper, ask: Ask, second: SecondCore}} page
 */
export function planningKeeper({ state, ask, second }) {
  let run = 0;
  const now = () => state.get().planning;
  const isRunning = () => Boolean(now()?.isRunning);

  /** @param {Partial<Planning>} news */
  function tell(news) {
    const planning = now();
    if (planning) state.set({ planning: { ...planning, ...news } });
  }

  /** @param {string} why what is said of it from now on */
  function halt(why) {
    run++;
    second.end();
    if (now()?.found) tell({ isRunning: false, progress: why });
    else state.set({ planning: null });
  }

  /**
   * The quick answer is the first core's where the second takes long to start, or can't be.
   * @param {Document} document
   * @param {number} effort
   * @param {() => boolean} isWanted
   */
  async function planned(document, effort, isWanted) {
    /** @type {{do: "plan", document: Document, effort: number}} */
    const message = { do: "plan", document, effort };
    const isOwn = effort > 0 || (await second.isQuick());
    const answer = isOwn && isWanted() ? await second.ask(message) : null;
    return answer || effort > 0 || !isWanted() ? answer : ask(message);
  }

  async function start() {
    const { record } = state.get();
    if (!record) return;
    const own = ++run;
    const isWanted = () => own === run;
    if (isRunning()) second.end();
    state.set({ planning: { ...NOTHING, of: stampOf(record), isRunning: true, progress: STARTING } });
    for (let effort = 0; isWanted() && isRunning(); effort++) {
      const answer = await planned(record.document, effort, isWanted);
      if (!isWanted()) return;
      if (!answer) tell({ isRunning: false, progress: ALONE });
      else if (answer.ok) tell({ found: answer, isRunning: answer.more, progress: answer.progress });
      else tell({ isRunning: false, progress: "", error: answer.error });
    }
  }

  /**
   * It is stopped, and what was found is forgotten; who uses a plan has stopped the search for a better one.
   * @param {ProjectRecord | null} record
   */
  function drop(record) {
    const wasRunning = isRunning();
    if (wasRunning) halt("");
    state.set({ planning: wasRunning && record ? { ...NOTHING, of: stampOf(record), progress: CHANGED } : null });
  }

  // What was found for what is no more must not be kept.
  state.subscribe((changed) => {
    const { record } = state.get();
    if (changed.includes("record") && now() && isOfBefore(now(), record)) drop(record);
  });
  return { start, stop: () => isRunning() && halt(STOPPED) };
}
