import { freshId } from "../page/fresh-id.js";
import { lineMark } from "./line-mark.js";

const SIGNS = ["+", "−", "×", "÷"];

/** Whether a text begins with a sign, and so goes on from the line before it. */
export const beginsWithSign = (text) => SIGNS.includes(text.trim()[0]);

const BLANK = { text: "", correcting: null, goesOn: false, kept: null };
const CUT_OFF = {
  message: "It goes on from a line that was not entered.",
  remedy: "Type the whole sum, or clear it.",
};

/**
 * What was entered on the pad and is not on the tally yet. Enter takes what stands there in its moment, and the pad is
 * free at once; each goes to the tally in its turn, also when the page was closed meanwhile. What can't be entered
 * holds those behind it up until it is put right or left.
 *
 * `entering` of the state: a list of {id, text, correcting, goesOn} or {id, step}; the first may have an `error`.
 * `pad` has besides its text `correcting` (the line that it corrects), `goesOn` (from the line still on its way),
 * `fixing` (the id of what is put right), `aside` (what was being typed before it was lent), and `kept` ({of, id,
 * text} of the entry that was kept from it last).
 */
export function enteringKeeper({ state, tally, database }) {
  const all = () => state.get().entering;
  const pad = () => ({ ...BLANK, ...state.get().pad });
  const waited = new Map();
  let isRunning = false;

  /** The list and the pad change in one, in the store as well: nothing typed is in neither. */
  function put(entering, typed = {}) {
    const before = all();
    const now = { ...pad(), ...typed };
    // Another tab may have entered lines of its own, which stay.
    const mine = new Set([...before, ...entering].map(({ id }) => id));
    const merged = (kept = []) => [
      ...entering.map(({ error, ...each }) => each),
      ...kept.filter(({ id }) => !mine.has(id)),
    ];
    // What the store refuses is told by the state, which writes the pad as well.
    if (entering !== before) database.changePage({ entering: merged, pad: () => now }).catch(() => {});
    state.set({ entering, pad: now });
    run();
  }

  /** What is first in the list and can go to the tally now. */
  function next() {
    const [first] = all();
    return !first || first.error || pad().fixing === first.id ? null : first;
  }

  async function run() {
    if (isRunning) return;
    isRunning = true;
    for (let first = next(); first; first = next()) {
      const answer = await tally.enter(first);
      if (answer.ok) entered(first, answer.lines);
      else if (first.step) state.set({ entering: all().slice(1) });
      else held(first, answer.error);
      waited.get(first.id)?.(answer);
      waited.delete(first.id);
    }
    isRunning = false;
  }

  function entered({ correcting }, lines) {
    const line = lines.find(({ id }) => id === correcting) ?? lines.at(-1);
    const entering = all().slice(1);
    const now = pad();
    const goesOn = now.goesOn && entering.length === 0 && beginsWithSign(now.text);
    const typed = goesOn ? { ...now, text: lineMark(line) + now.text, goesOn: false } : now;
    state.set({ entering, entered: line, pad: typed });
  }

  function held(first, error) {
    state.set({ entering: [{ ...first, error }, ...all().slice(1)] });
    const { text, correcting } = pad();
    if (all().length === 1 && text.trim() === "" && !correcting) fix();
  }

  /** What can't be entered stands in the pad to be put right; what was being typed waits. */
  function fix() {
    const [{ id, text, correcting, goesOn }] = all();
    const { text: typed, ...others } = pad();
    const aside = { text: typed, correcting: others.correcting, goesOn: others.goesOn };
    state.set({ pad: { ...others, text, correcting, goesOn, fixing: id, aside } });
  }

  const lentNoMore = ({ aside }) => ({ ...BLANK, ...aside, fixing: null, aside: null });

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
    /** A one-touch step from the last line, behind what was entered before. @returns what came of it */
    step(how) {
      const item = { id: freshId(), step: how };
      const done = new Promise((resolve) => waited.set(item.id, resolve));
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
    /** Lend the pad to a text, as to correct a line; what was being typed comes back afterwards. */
    lend(text, correcting) {
      const now = pad();
      const aside = now.aside ?? { text: now.text, correcting: now.correcting, goesOn: now.goesOn };
      state.set({ pad: { ...now, text, correcting, goesOn: false, fixing: null, aside, answer: null } });
    },
  };
}
