import { otherTabs } from "../page/other-tabs.js";
import { refusedByStore } from "../page/refused.js";
import { allProjects } from "./all-projects.js";
import { changeMaker } from "./change-maker.js";
import { openedProject } from "./opened.js";
import { again, back } from "./undo-redo.js";
import { workedOut } from "./worked-out.js";

/** @import { Ask, Document } from "../../python/contract.d.ts" */
/** @import { Along, Database, Done, How, NotDone, ProjectRecord, StateKeeper } from "../shapes.d.ts" */

/**
 * The open project. What is done to it runs one after another; change-maker.js says how a change is made.
 * @param {object} page
 * @param {Database} page.database
 * @param {StateKeeper} page.state
 * @param {Ask} page.ask
 * @param {(changed: Done) => Promise<boolean>} page.accept shows what a change brings; whether it is kept
 * @param {(record: ProjectRecord) => void} page.dropped told when the open one was deleted in another tab
 * @param {(before: ProjectRecord, after: ProjectRecord, store: (along: Along) => Promise<ProjectRecord | null>) =>
 *   Promise<ProjectRecord | null>} page.along stores with a change the lines of the tally that follow it (tally.js)
 */
export function projectKeeper({ database, state, ask, accept, dropped, along }) {
  const tellOthers = otherTabs("sawside-projects", changedElsewhere);
  const opened = openedProject({ database, state, ask });
  const whole = allProjects({ database, state, ask, opened, tellOthers });
  const { inTurn, done } = oneByOne();
  const work = workedOut(ask);
  const make = changeMaker({ database, state, ask, accept, along, view: opened.view, tellOthers });
  /** @type {typeof make} */
  const change = (toDo, how) => inTurn(() => make(toDo, how));

  /** @param {{id: string, dropped?: boolean}} news */
  function changedElsewhere(news) {
    const { record } = state.get();
    if (!record || news.id !== record.id) return;
    if (!news.dropped) return inTurn(() => opened.open(news.id));
    inTurn(opened.leave).then(() => dropped(record));
  }

  return {
    ...acts(change, work),
    open: (/** @type {string} */ id) => inTurn(() => whole.open(id)),
    begin: (/** @type {string} */ name) => inTurn(() => whole.begin(name)),
    /**
     * @param {Document} document
     * @param {Record<string, string>} [pictures]
     */
    add: (document, pictures) => inTurn(() => whole.add(document, pictures)),
    look: () => inTurn(whole.look),
    keepAgain: () => inTurn(whole.keepAgain),
    drop: (/** @type {string} */ id) => inTurn(() => whole.drop(id)),
    all: () => database.projects(),
    /** Resolves with the open record once no change to it is on its way. */
    settled: () => done().then(() => state.get().record),
  };
}

/**
 * What can be done to the open one.
 * @param {ReturnType<typeof changeMaker>} change
 * @param {ReturnType<typeof workedOut>} work
 */
const acts = (change, work) => ({
  /**
   * @param {Parameters<typeof work.act>[0]} act
   * @param {How} [how]
   */
  change: (act, how) => change(work.act(act), how),
  /**
   * The same for a message that answers as a change does.
   * @param {Parameters<typeof work.message>[0]} message makes it
   * @param {How} [how]
   */
  changeBy: (message, how) => change(work.message(message), how),
  /** @param {How["of"]} [of] */
  undo: (of) => change(work.undo, { history: back(), of }),
  /**
   * Takes back one step and nothing else, whatever was done after it.
   * @param {number} step of the answer to a change
   * @param {How["of"]} [of]
   */
  undoStep: (step, of) => change(work.undoStep(step), { history: back(step), of }),
  /** @param {How["of"]} [of] */
  redo: (of) => change(work.redo, { history: again, of }),
});

/** Work done one after another; what the store refuses is told as the core tells a refusal. */
function oneByOne() {
  /** @type {Promise<any>} whatever the last one came to */
  let last = Promise.resolve();
  /**
   * @template Answer
   * @param {() => Promise<Answer>} work
   * @returns {Promise<Answer | NotDone>}
   */
  function inTurn(work) {
    const done = last.then(() => work().catch(refusedByStore));
    last = done;
    return done;
  }
  return { inTurn, done: () => last };
}
