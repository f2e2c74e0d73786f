import { freshId } from "../page/fresh-id.js";
import { lineMark } from "./naming.js";

/** @import { Answered, Tallied, TallyLineTold } from "../../python/contract.d.ts" */
/** @import { Aside, Database, Entering, NotDone, Pad, Refusal, StateKeeper } from "../shapes.d.ts" */

/** @typedef {Answered<Pick<Tallied, "lines">> | NotDone} Entered */
/** @typedef {{enter(item: Entering): Promise<Entered>}} Tally */

const SIGNS = ["+", "−", "×", "÷"];

/**
 * Whether a text begins with a sign, and so goes on from the line before it.
 * @param {string} text
 */
const beginsWithSign = (text) => SIGNS.includes(text.trim()[0]);

/** @type {Pad} */
const BLANK = { text: "", correcting: null, goesOn: false, kept: null };
const CUT_OFF = {
  message: "This builds on a line that wasn’t entered.",
  remedy: "Type the whole sum, or clear it.",
};

/**
 * What was entered on the pad and is not on the tally yet. Enter takes what stands there in its moment, and the pad is
 * free at once; each goes to the tally in its turn, also when the page was closed meanwhile. What can't be entered
 * holds those behind it up until it is put right or left.
 *
 * `entering` of the state is the list of them; the first may have an `error`. For `pad` see shapes.d.ts.
 * @param {{state: StateKeeper, tally: Tally, database: Database}} page
 */
export function enteringKeeper({ state, tally, database }) {
  const { all, pad } = of(state);
  const { put, run, fix, whenEntered } = queue({ state, tally, database });

  return {
    run,
    /** Enter what stands in the pad. */
    enter() {
      const { text, correcting, goesOn, fixing } = pad();
      if (text.trim() === "") return;
      const item = { id: freshId(), text, correcting, goesOn: goesOn && beginsWithSign(text) };
      const entering = fixing ? [item, ...all().slice(1)] : [...all(), item];
      put(entering, lentNoMore(pad()));
    },
    /**
     * A one-touch step from the last line, behind what was entered before.
     * @param {string} how
     * @returns what came of it
     */
    step(how) {
      const item = { id: freshId(), step: how };
      const done = whenEntered(item);
      put([...all(), item]);
      return done;
    },
    /** Empty the pad; what was put right in it is left, and with it the steps that it would have been taken on by. */
    clear() {
      const { fixing } = pad();
      if (!fixing) return put(all(), lentNoMore(pad()));
      const left = all().slice(1);
      while (left[0]?.step) left.shift();
      if (left[0]?.goesOn) left[0] = { ...left[0], error: CUT_OFF };
      put(left, lentNoMore(pad()));
    },
    fix,
    /**
     * Lend the pad to a text, as to correct a line; what was being typed comes back afterwards.
     * @param {string} text
     * @param {string | null} correcting
     */
    lend(text, correcting) {
      const now = pad();
      const aside = now.aside ?? asideOf(now);
      state.set({ pad: { ...now, text, correcting, goesOn: false, fixing: null, aside, answer: null } });
    },
  };
}

/**
 * The list and the pad of the state.
 * @param {StateKeeper} state
 */
const of = (state) => ({ all: () => state.get().entering, pad: () => ({ ...BLANK, ...state.get().pad }) });

/**
 * @param {Pad} pad
 * @returns {Aside}
 */
const asideOf = ({ text, correcting = null, goesOn = false }) => ({ text, correcting, goesOn });

/** @param {Pad} pad */
const lentNoMore = ({ aside }) => ({ ...BLANK, ...aside, fixing: null, aside: null });

/**
 * Takes one after another to the tally.
 * @param {{state: StateKeeper, tally: Tally, database: Database}} page
 */
function queue({ state, tally, database }) {
  const { all, pad } = of(state);
  /** @type {Map<string, (answer: Entered) => void>} */
  const waited = new Map();
  let isRunning = false;

  /**
   * The list and the pad change in one, in the store as well: nothing typed is in neither.
   * @param {Entering[]} entering
   * @param {Partial<Pad>} [typed]
   */
  function put(entering, typed = {}) {
    const before = all();
    const now = { ...pad(), ...typed };
    // What the store refuses is told by the state, which writes the pad as well.
    if (entering !== before) {
      const merged = mergedInto(before, entering);
      database.changePage({ entering: merged, pad: () => now }).catch(() => {});
    }
    state.set({ entering, pad: now });
    run();
  }

  async function run() {
    if (isRunning) return;
    isRunning = true;
    for (let first = next(all(), pad()); first; first = next(all(), pad())) {
      const answer = await tally.enter(first);
      if (answer.ok) state.set(onTally(first, answer.lines, all().slice(1), pad()));
      else if (first.step) state.set({ entering: all().slice(1) });
      else held(first, answer.error);
      waited.get(first.id)?.(answer);
      waited.delete(first.id);
    }
    isRunning = false;
  }

  /**
   * @param {Entering} first
   * @param {Refusal} error
   */
  function held(first, error) {
    state.set({ entering: [{ ...first, error }, ...all().slice(1)] });
    const { text, correcting } = pad();
    if (all().length === 1 && text.trim() === "" && !correcting) fix();
  }

  const fix = () => state.set({ pad: lentTo(all()[0], pad()) });

  /**
   * @param {Entering} item
   * @returns {Promise<Entered>} what came of it
   */
  const whenEntered = ({ id }) => new Promise((resolve) => waited.set(id, resolve));

  return { put, run, fix, whenEntered };
}

/**
 * What is first in the list and can go to the tally now; null where nothing can.
 * @param {Entering[]} entering
 * @param {Pad} pad
 */
const next = ([first], { fixing }) => (!first || first.error || fixing === first.id ? null : first);

/**
 * What can't be entered stands in the pad to be put right; what was being typed waits.
 * @param {Entering} item
 * @param {Pad} pad
 * @returns {Pad}
 */
const lentTo = ({ id, text = "", correcting, goesOn }, pad) => ({
  ...pad,
  text,
  correcting,
  goesOn,
  fixing: id,
  aside: asideOf(pad),
});

/**
 * Another tab may have entered lines of its own, which stay.
 * @param {Entering[]} before as they were in this tab
 * @param {Entering[]} entering as they are now
 * @returns {(kept?: Entering[]) => Entering[]}
 */
function mergedInto(before, entering) {
  const mine = new Set([...before, ...entering].map(({ id }) => id));
  return (kept = []) => [...entering.map(({ error, ...each }) => each), ...kept.filter(({ id }) => !mine.has(id))];
}

/**
 * What changes once an item is on the tally: a text that goes on from it, as the last one, gets the mark of its line.
 * @param {Entering} item
 * @param {TallyLineTold[]} lines
 * @param {Entering[]} entering what is left
 * @param {Pad} pad
 */
function onTally({ correcting }, lines, entering, pad) {
  const line = lines.find(({ id }) => id === correcting) ?? lines[lines.length - 1];
  const goesOn = pad.goesOn && entering.length === 0 && beginsWithSign(pad.text);
  return { entering, entered: line, pad: goesOn ? { ...pad, text: lineMark(line) + pad.text, goesOn: false } : pad };
}
