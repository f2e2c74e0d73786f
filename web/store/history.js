/**
 * How an act on a project is asked about, told and remembered: done, taken back, or done once more.
 * What is taken back on purpose is asked about only where other numbers follow from it. A step of
 * the history is {back, of}: the act that undoes, and what is undone, in words. Earlier versions
 * kept the act alone.
 */
const step = (back, of) => ({ back, of });
const ofLast = (steps) => steps.at(-1).of;

/** The act that the last of some steps does. */
export const last = (steps) => steps.at(-1).back ?? steps.at(-1);

const told = (prefix, steps, said) => (ofLast(steps) ? `${prefix}: ${ofLast(steps)}` : said);

const moves = ({ follows }) => follows.length > 0;

export const done = {
  asks: (changed) => moves(changed) || changed.judged.length > 0,
  leave: "Take it back",
  said: (_old, { said }) => said,
  kept: (old, undo, said) => ({ undo: [...old.undo, step(undo, said)], redo: [] }),
};

export const back = {
  asks: moves,
  leave: "Leave it",
  said: (old, { said }) => told("Took back", old.undo, said),
  kept: (old, redo) => ({ undo: old.undo.slice(0, -1), redo: [...old.redo, step(redo, ofLast(old.undo))] }),
};

export const again = {
  asks: moves,
  leave: "Leave it",
  said: (old, { said }) => told("Done again", old.redo, said),
  kept: (old, undo) => ({ undo: [...old.undo, step(undo, ofLast(old.redo))], redo: old.redo.slice(0, -1) }),
};
