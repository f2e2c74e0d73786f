/**
 * How an act on a project is asked about, told and remembered: done, taken back, or done once more.
 * What is taken back on purpose is asked about only where other numbers follow from it. A step of
 * the history is {back, of, did, id}: the act that undoes, what is undone, in words, the name of what
 * was done, and a number of its own within the project. Earlier versions kept the first two or one.
 */

/** @import { Doing, Done, History, Step } from "../shapes.d.ts" */

/**
 * @param {Doing} back
 * @param {Step} step
 * @returns {Step}
 */
const remembered = (back, { of, did, id }) => ({ back, of, did, id });
/** @param {Step[]} steps */
const ofLast = (steps) => steps.at(-1)?.of ?? "";

/**
 * The act that takes back a step, or does it once more.
 * @param {Step} step
 * @returns {Doing}
 */
export const actOf = (step) => step.back ?? step;

const told = (prefix, of, said) => (of ? `${prefix}: ${of}` : said);

/** @param {Done} changed */
const moves = ({ follows }) => follows.length > 0;

/** @type {History} */
export const done = {
  asks: (changed) => moves(changed) || changed.judged.length > 0,
  said: (_old, { said }) => said,
  kept: (old, { undo, said, did }) => ({
    undo: [...old.undo, { back: undo, of: said, did, id: old.revision + 1 }],
    redo: [],
  }),
};

/**
 * Taking back one step of those that are done: the last one, or the one with an id, wherever it is.
 * @param {number | null} [id]
 * @returns {History}
 */
export const back = (id = null) => {
  const found = ({ undo }) => (id === null ? undo.at(-1) : undo.find((each) => each.id === id));
  return {
    asks: moves,
    said: (old, { said }) => told("Undid", found(old).of, said),
    kept: (old, { undo: redo }) => ({
      undo: old.undo.filter((each) => each !== found(old)),
      redo: [...old.redo, remembered(redo, found(old))],
    }),
  };
};

/** @type {History} */
export const again = {
  asks: moves,
  said: (old, { said }) => told("Redid", ofLast(old.redo), said),
  kept(old, { undo }) {
    const [last] = old.redo.slice(-1);
    return {
      undo: [...old.undo, remembered(undo, { ...last, id: old.revision + 1 })],
      redo: old.redo.slice(0, -1),
    };
  },
};
