import { otherTabs } from "../page/other-tabs.js";
import { refusedByStore } from "../page/refused.js";
import { turnsOf } from "../page/turns.js";
import { identity } from "../project/identity.js";
import { lineMark } from "./line-mark.js";
import { tallyNames } from "./tally-names.js";

const NAME = "sawside-tally";
/** So many of what was entered last are known by their ids. */
const MOST_ENTERED = 100;

const remembered = (old, undo) => ({ undo: [...old.undo, undo], redo: [] });

/** The act that enters an item; what goes on from the line before it says so by its mark. */
function actOf({ step, text, correcting, goesOn }, last) {
  if (step) return { act: "step", how: step };
  if (correcting) return { act: "correct", id: correcting, text };
  return { act: "enter", text: goesOn && last ? lineMark(last) + text : text };
}

/**
 * The tally of the pad. The core works out each change; the whole is kept with strict durability
 * before it is shown, with the acts that undo and redo it. Tabs take turns: each change is made on
 * what the store holds, and told to the others.
 */
export function tallyKeeper({ state, ask, settings, database }) {
  const tellOthers = otherTabs(NAME, changedElsewhere);
  const inTurn = turnsOf(NAME);
  const now = () => state.get().tally ?? { tally: null, lines: [], undo: [], redo: [] };
  const names = tallyNames({ state, ask, settings, now });

  /** @param {{id: string}} [item] of entering.js, which is then no longer on its way */
  async function make(act, history, item) {
    const before = (await database.pageOf("tally")) ?? now();
    const { entered = [] } = before;
    // It was entered, but the page was closed before it knew, or another tab has taken it over.
    if (item && entered.includes(item.id)) return { ok: true, lines: before.lines };
    const answer = await worked(before, act(before));
    if (!answer.ok) return answer;
    const tally = { ...before, tally: answer.tally, lines: answer.lines, ...history(before, answer.undo) };
    if (item) tally.entered = [...entered, item.id].slice(-MOST_ENTERED);
    const entering = (kept = []) => kept.filter(({ id }) => id !== item.id);
    await database.changePage({ tally: () => tally, ...(item ? { entering } : {}) });
    tellOthers("changed");
    state.set({ tally });
    return answer;
  }

  /**
   * Store a change of the open project, and in one with it the lines that use something of it: what was renamed is
   * renamed in them, and they come to what they come to by then.
   * @param {object} before the record as it was
   * @param {object} after the record that is to be kept
   * @param {(along: object) => Promise<object | null>} store keeps it, and with it what `keepProject` may keep along
   */
  const along = (before, after, store) =>
    inTurn(async () => {
      const old = (await database.pageOf("tally")) ?? now();
      const documents = [before, after].map(identity);
      if (!old.tally?.lines.some(({ project }) => documents.includes(project?.id))) return store({});
      const { document } = after;
      const around = { settings: document.settings, document, project: identity(after) };
      const answer = await ask({ do: "tally", tally: old.tally, ...around });
      // Lines that can't be told, as those of a newer version, hold up no change of the project.
      if (!answer.ok) return store({});
      const tally = { ...old, tally: answer.tally, lines: answer.lines };
      const kept = await store({ changes: { tally: () => tally } });
      if (!kept) return null;
      tellOthers("changed");
      state.set({ tally });
      return kept;
    });

  /** The open project goes along where a line is marked as its own, or an act may name something of it. */
  function worked({ tally }, act) {
    const { record } = state.get();
    const own = identity(record);
    const isUsed =
      own && (tally?.lines.some(({ project }) => project?.id === own) || JSON.stringify(act ?? null).includes(own));
    const around = isUsed ? { document: record.document } : names.projectNames(act);
    return ask({ do: "tally", tally, act, settings: settings(), ...around, project: own });
  }

  /** Lines of the open project follow it; those of another say that it is not open. No other tab need know. */
  async function look() {
    const before = (await database.pageOf("tally")) ?? now();
    const answer = await worked(before, null);
    if (!answer.ok) return;
    const tally = { ...before, tally: answer.tally, lines: answer.lines };
    await database.changePage({ tally: () => tally });
    state.set({ tally });
  }

  async function follow() {
    if (now().tally?.lines.some(({ project }) => project)) await safely(look);
  }

  state.subscribe((changed) => changed.includes("view") && follow());

  const safely = (work) => inTurn(() => work().catch(refusedByStore));

  /** Another tab may have another project open: what its lines come to there is not what they come to here. */
  async function changedElsewhere() {
    const tally = await database.pageOf("tally");
    if (tally) state.set({ tally });
    await follow();
  }

  return {
    along,
    /** Write it once more, as after the store was erased. */
    keepAgain: () => safely(() => database.changePage({ tally: now, entering: () => state.get().entering })),
    act: (act) => safely(() => make(() => act, remembered)),
    /** What was entered on the pad (entering.js), once and no more. */
    enter: (item) => safely(() => make((old) => actOf(item, old.lines.at(-1)), remembered, item)),
    undo: () =>
      safely(() =>
        make(
          (old) => old.undo.at(-1),
          (old, redo) => ({ undo: old.undo.slice(0, -1), redo: [...old.redo, redo] }),
        ),
      ),
    redo: () =>
      safely(() =>
        make(
          (old) => old.redo.at(-1),
          (old, undo) => ({ undo: [...old.undo, undo], redo: old.redo.slice(0, -1) }),
        ),
      ),
    ...names,
  };
}
