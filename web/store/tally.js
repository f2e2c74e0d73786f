import { naming } from "./naming.js";
import { refusedByStore } from "./refused.js";

const LOCK = "sawside-tally";
const LINES = /\[\d+\]/g;

/** Nothing to undo where nothing was done. */
const KEPT = ({ undo, redo }) => ({ undo, redo });

/**
 * The tally of the pad. The core works out each change; the whole is kept with strict durability
 * before it is shown, with the acts that undo and redo it. Tabs take turns: each change is made on
 * what the store holds, and told to the others.
 */
export function tallyKeeper({ state, ask, settings, database }) {
  const channel = new BroadcastChannel(LOCK);
  const now = () => state.get().tally ?? { tally: null, lines: [], undo: [], redo: [] };

  async function make(act, history) {
    const before = (await database.pageOf("tally")) ?? now();
    const asked = { tally: before.tally, act: act(before) };
    const answer = await ask({ do: "tally", ...asked, settings: settings(), ...projectNames(asked) });
    if (!answer.ok) return answer;
    const tally = { tally: answer.tally, lines: answer.lines, ...history(before, answer.undo) };
    await database.keepPageSurely("tally", tally);
    channel.postMessage("changed");
    state.set({ tally });
    return answer;
  }

  /** The project goes along where a text may call something of it; a line's number calls a line. */
  function projectNames(texts) {
    const { record } = state.get();
    return naming(record, JSON.stringify(texts).replace(LINES, ""));
  }

  /** Lines that use names of the project follow it. */
  let follows = false;
  async function follow() {
    const { tally } = now();
    const { document } = projectNames(tally?.lines ?? []);
    if (!document && !follows) return;
    follows = Boolean(document);
    await inTurn(() => make(() => null, KEPT));
  }

  state.subscribe((changed) => changed.includes("view") && follow());

  const inTurn = (work) => navigator.locks.request(LOCK, () => work().catch(refusedByStore));

  channel.onmessage = () => database.pageOf("tally").then((tally) => tally && state.set({ tally }));

  return {
    projectNames,
    act: (act) =>
      inTurn(() =>
        make(
          () => act,
          (old, undo) => ({ undo: [...old.undo, undo], redo: [] }),
        ),
      ),
    undo: () =>
      inTurn(() =>
        make(
          (old) => old.undo.at(-1),
          (old, redo) => ({ undo: old.undo.slice(0, -1), redo: [...old.redo, redo] }),
        ),
      ),
    redo: () =>
      inTurn(() =>
        make(
          (old) => old.redo.at(-1),
          (old, undo) => ({ undo: [...old.undo, undo], redo: old.redo.slice(0, -1) }),
        ),
      ),
    /** What the names in a text stand for, so that the core need not be sent the whole tally. */
    namesIn(text) {
      const folded = text.toLowerCase();
      const names = {};
      for (const { id, name, value } of now().lines) {
        if (!value) continue;
        const known = { exact: value.exact, kind: value.kind };
        if (folded.includes(`[${id}]`)) names[id] = known;
        if (name && folded.includes(name.toLowerCase())) names[name] = known;
      }
      return names;
    },
  };
}
