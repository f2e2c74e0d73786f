import { identity } from "./identity.js";
import { refusedByStore } from "./refused.js";
import { tallyNames } from "./tally-names.js";

const LOCK = "sawside-tally";

/**
 * The tally of the pad. The core works out each change; the whole is kept with strict durability
 * before it is shown, with the acts that undo and redo it. Tabs take turns: each change is made on
 * what the store holds, and told to the others.
 */
export function tallyKeeper({ state, ask, settings, database }) {
  const channel = new BroadcastChannel(LOCK);
  const now = () => state.get().tally ?? { tally: null, lines: [], undo: [], redo: [] };
  const names = tallyNames({ state, ask, settings, now });

  async function make(act, history) {
    const before = (await database.pageOf("tally")) ?? now();
    const answer = await worked(before, act(before));
    if (!answer.ok) return answer;
    const tally = { tally: answer.tally, lines: answer.lines, ...history(before, answer.undo) };
    await database.keepPageSurely("tally", tally);
    channel.postMessage("changed");
    state.set({ tally });
    return answer;
  }

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
    await database.keepPageSurely("tally", tally);
    state.set({ tally });
  }

  async function follow() {
    if (now().tally?.lines.some(({ project }) => project)) await inTurn(look);
  }

  state.subscribe((changed) => changed.includes("view") && follow());

  const inTurn = (work) => navigator.locks.request(LOCK, () => work().catch(refusedByStore));

  /** Another tab may have another project open: what its lines come to there is not what they come to here. */
  channel.onmessage = async () => {
    const tally = await database.pageOf("tally");
    if (tally) state.set({ tally });
    await follow();
  };

  return {
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
    ...names,
  };
}
