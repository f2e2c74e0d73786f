import { otherTabs } from "../page/other-tabs.js";
import { refusedByStore } from "../page/refused.js";
import { turnsOf } from "../page/turns.js";
import { identity } from "../project/identity.js";
import { lineMark } from "./naming.js";
import { tallyNames } from "./tally-names.js";

/** @import { Act, Ask, Settings, Tallied, TallyLineTold } from "../../python/contract.d.ts" */
/** @import { Along, Database, Entering, NotDone, ProjectRecord, StateKeeper, TallyKept } from "../shapes.d.ts" */

/** @typedef {{state: StateKeeper, ask: Ask, settings: () => Settings, database: Database}} Page */

const NAME = "sawside-tally";
/** So many of what was entered last are known by their ids. */
const MOST_ENTERED = 100;

/** @typedef {(old: TallyKept, undo: Act) => Pick<TallyKept, "undo" | "redo">} History how an act is remembered */

/** @type {History} */
const remembered = (old, undo) => ({ undo: [...old.undo, undo], redo: [] });
/** @type {History} */
const takenBack = (old, redo) => ({ undo: old.undo.slice(0, -1), redo: [...old.redo, redo] });
/** @type {History} */
const doneAgain = (old, undo) => ({ undo: [...old.undo, undo], redo: old.redo.slice(0, -1) });

/**
 * The act that enters an item; what goes on from the line before it says so by its mark.
 * @param {Entering} item
 * @param {TallyLineTold} [last]
 * @returns {Act}
 */
function actOf({ step, text, correcting, goesOn }, last) {
  if (step) return { act: "step", how: step };
  if (correcting) return { act: "correct", id: correcting, text };
  return { act: "enter", text: goesOn && last ? lineMark(last) + text : text };
}

/**
 * The tally of the pad. The core works out each change; the whole is kept with strict durability
 * before it is shown, with the acts that undo and redo it. Tabs take turns: each change is made on
 * what the store holds, and told to the others.
 * @param {Page} page
 */
export function tallyKeeper({ state, ask, settings, database }) {
  const tellOthers = otherTabs(NAME, changedElsewhere);
  const inTurn = turnsOf(NAME);
  const { now, kept } = tallyIn({ state, database });
  const names = tallyNames({ state, ask, settings, now });
  const worked = workedWith({ state, ask, settings, names });
  const make = makerWith({ state, database, kept, worked, tellOthers });

  /** Lines of the open project follow it; those of another say that it is not open. No other tab need know. */
  async function look() {
    const before = await kept();
    const answer = await worked(before, null);
    if (!answer.ok) return;
    const tally = toldBy(before, answer);
    await database.changePage({ tally: () => tally });
    state.set({ tally });
  }

  async function follow() {
    if (now().tally?.lines.some(({ project }) => project)) await safely(look);
  }

  /**
   * @template Answer
   * @param {() => Promise<Answer>} work
   * @returns {Promise<Answer | NotDone>}
   */
  const safely = (work) => inTurn(() => work().catch(refusedByStore));

  /** Another tab may have another project open: what its lines come to there is not what they come to here. */
  async function changedElsewhere() {
    const tally = await database.pageOf("tally");
    if (tally) state.set({ tally });
    await follow();
  }

  state.subscribe((changed) => changed.includes("view") && follow());

  return {
    along: alongWith({ state, ask, database, inTurn, tellOthers }),
    /** Write it once more, as after the store was erased. */
    keepAgain: () => safely(() => database.changePage({ tally: now, entering: () => state.get().entering })),
    /** @param {Act} act */
    act: (act) => safely(() => make(() => act, remembered)),
    /**
     * What was entered on the pad (entering.js), once and no more.
     * @param {Entering} item
     */
    enter: (item) => safely(() => make((old) => actOf(item, old.lines.at(-1)), remembered, item)),
    undo: () => safely(() => make((old) => old.undo.at(-1), takenBack)),
    redo: () => safely(() => make((old) => old.redo.at(-1), doneAgain)),
    ...names,
  };
}

/**
 * Makes changes of the tally on what the store holds.
 * @param {Pick<Page, "state" | "database"> & {kept(): Promise<TallyKept>, worked: ReturnType<typeof workedWith>,
 *   tellOthers(news: string): void}} page
 */
function makerWith({ state, database, kept, worked, tellOthers }) {
  /**
   * @param {(before: TallyKept) => Act | null | undefined} act
   * @param {History} history
   * @param {Entering} [item] of entering.js, which is then no longer on its way
   */
  return async function make(act, history, item) {
    const before = await kept();
    const { entered = [] } = before;
    // It was entered, but the page was closed before it knew, or another tab has taken it over.
    if (item && entered.includes(item.id)) return /** @type {const} */ ({ ok: true, lines: before.lines });
    const answer = await worked(before, act(before));
    if (!answer.ok) return answer;
    const tally = { ...toldBy(before, answer), ...(answer.undo && history(before, answer.undo)) };
    if (item) tally.entered = [...entered, item.id].slice(-MOST_ENTERED);
    await database.changePage({ tally: () => tally, ...(item && { entering: without(item) }) });
    tellOthers("changed");
    state.set({ tally });
    return answer;
  };
}

/**
 * The tally as this tab shows it, and as the store holds it.
 * @param {Pick<Page, "state" | "database">} page
 */
function tallyIn({ state, database }) {
  /** @returns {TallyKept} */
  const now = () => state.get().tally ?? { tally: null, lines: [], undo: [], redo: [] };
  return { now, kept: async () => (await database.pageOf("tally")) ?? now() };
}

/**
 * @param {TallyKept} before
 * @param {Tallied} answer
 * @returns {TallyKept}
 */
const toldBy = (before, { tally, lines }) => ({ ...before, tally, lines });

/**
 * What is on its way, without an item.
 * @param {Entering} item
 * @returns {(waiting?: Entering[]) => Entering[]}
 */
const without =
  (item) =>
  (waiting = []) =>
    waiting.filter(({ id }) => id !== item.id);

/**
 * Asks the core about the tally. The open project goes along where a line is marked as its own, or an act may name
 * something of it.
 * @param {Pick<Page, "state" | "ask" | "settings"> & {names: ReturnType<typeof tallyNames>}} page
 */
function workedWith({ state, ask, settings, names }) {
  /**
   * @param {TallyKept} before
   * @param {Act | null | undefined} act
   */
  return ({ tally }, act) => {
    const { record } = state.get();
    const own = identity(record);
    const isUsed =
      own && (tally?.lines.some(({ project }) => project?.id === own) || JSON.stringify(act ?? null).includes(own));
    const around = isUsed ? { document: record?.document } : names.projectNames(act);
    return ask({ do: "tally", tally, act, settings: settings(), ...around, project: own });
  };
}

/**
 * Stores a change of the open project, and in one with it the lines that use something of it: what was renamed is
 * renamed in them, and they come to what they come to by then.
 * @param {Pick<Page, "state" | "ask" | "database"> & {inTurn: ReturnType<typeof turnsOf>, tellOthers(news: string): void}} page
 */
function alongWith({ state, ask, database, inTurn, tellOthers }) {
  const { kept } = tallyIn({ state, database });
  /**
   * @param {ProjectRecord} before the record as it was
   * @param {ProjectRecord} after the record that is to be kept
   * @param {(along: Along) => Promise<ProjectRecord | null>} store keeps it, and with it what hangs on it
   * @returns {Promise<ProjectRecord | null>}
   */
  const along = (before, after, store) =>
    inTurn(async () => {
      const old = await kept();
      const documents = [before, after].map(identity);
      const isUsed = old.tally?.lines.some(({ project }) => project && documents.includes(project.id));
      if (!isUsed) return store({});
      const { document } = after;
      const around = { settings: document.settings, document, project: identity(after) };
      const answer = await ask({ do: "tally", tally: old.tally, ...around });
      // Lines that can't be told, as those of a newer version, hold up no change of the project.
      if (!answer.ok) return store({});
      const tally = toldBy(old, answer);
      const record = await store({ changes: { tally: () => tally } });
      if (!record) return null;
      tellOthers("changed");
      state.set({ tally });
      return record;
    });
  return along;
}
