import { freshId } from "../page/fresh-id.js";
import { otherTabs } from "../page/other-tabs.js";
import { refusedByStore } from "../page/refused.js";
import { actOf, again, back, done } from "./history.js";
import { identity } from "./identity.js";
import { changedMeanwhile } from "./meanwhile.js";
import { viewOf } from "./old-picture.js";
import { oneStep } from "./one-step.js";
import { dated } from "./when.js";

const TAKEN_BACK = {
  ok: false,
  error: { kind: "taken back", message: "Taken back: nothing was changed.", remedy: "What you typed is still here." },
};
const GONE = {
  ok: false,
  error: {
    kind: "store",
    message: "This project is no longer in the browser's store.",
    remedy: "Open another, or restore it from a backup.",
  },
};
const ELSEWHERE = {
  ok: false,
  error: {
    kind: "elsewhere",
    message: "Another project is open now: nothing was changed.",
    remedy: "Open the one that this belongs to, then do it again.",
  },
};
const NOTHING_LEFT = {
  ok: false,
  error: { kind: "nothing", message: "There is nothing left to take back.", remedy: "" },
};

/**
 * The open project. Each change is worked out by the core, shown when other numbers follow from it,
 * written with strict durability, and only then drawn. Changes run one after another; when another
 * tab was first, ours is made again on its, unless both changed one entry.
 * @param {object} page
 * @param {(changed: object, leave: string) => Promise<boolean>} page.accept shows what a change brings; whether it is kept
 * @param {(record: object) => void} page.dropped told when the open one was deleted in another tab
 * @param {Function} page.along stores with a change the lines of the tally that follow it (tally.js)
 */
export function projectKeeper({ database, state, ask, accept, dropped, along }) {
  const tellOthers = otherTabs("sawside-projects", changedElsewhere);
  let queue = Promise.resolve();

  /** A project that can't be shown, as one saved by a newer version, is left as it is. */
  async function view(record) {
    const seen = await ask({ do: "view", document: record.document, order: state.get().saw.order });
    const shown = seen.ok ? { view: viewOf(record, seen), unshown: null } : { view: null, unshown: seen.error };
    state.set({ record, openProject: record.id, ...shown });
  }

  async function open(id) {
    const record = await database.project(id);
    if (!record) return GONE;
    await view(record);
    return { ok: true };
  }

  /** When the open one is gone, another is opened, if there is one. */
  async function leave() {
    const [other] = await database.projects();
    if (other) await view(other);
    else state.set({ record: null, openProject: null, view: null, unshown: null });
  }

  /**
   * The core's answer to an act, or to what a function makes of the latest document: an act, or why there is none.
   * An act that holds a whole document puts it in the place of the other.
   */
  async function worked(latest, wanted) {
    const act = typeof wanted === "function" ? wanted(latest.document) : wanted;
    if ("ok" in act) return act;
    if (act.document) return replaced(latest, act);
    return { ...(await ask({ do: "change", document: latest.document, act: dated(act) })), did: act.act };
  }

  /** Drafts belong to a document: they stay with the old one, and come back with it. */
  const replaced = (latest, { document, documentId = freshId(), said = "Done." }) => ({
    ok: true,
    document,
    documentId,
    undo: { document: latest.document, documentId: identity(latest) },
    said,
    follows: [],
    judged: [],
  });

  const stepped = async (latest, steps) => (steps.length ? worked(latest, actOf(steps.at(-1))) : NOTHING_LEFT);

  async function steppedOne(latest, id) {
    const step = oneStep(latest.undo, id);
    return step.error ? step : worked(latest, actOf(step));
  }

  /**
   * @param {(latest: object) => Promise<object>} work from the latest record to the core's answer
   * @param {object} [how]
   * @param {object} [how.history] of history.js: how it is remembered and told
   * @param {string | null} [how.of] the identity of the document it was begun on: on another it is not done
   * @param {object | null} [how.was] the entry as the person saw it when they began to correct it
   * @param {object} [how.pictures] {key: address} of the photos that it brings
   */
  async function make(work, { history = done, of, was = null, pictures = {} } = {}) {
    for (;;) {
      const now = state.get().record;
      if (of !== undefined && identity(now) !== of) return ELSEWHERE;
      const latest = now ? ((await database.project(now.id)) ?? now) : await begun();
      if (latest.failed) return latest.failed;
      if (now && identity(latest) !== identity(now)) {
        await view(latest);
        return ELSEWHERE;
      }
      const other = changedMeanwhile(latest.document, was);
      if (other) {
        await view(latest);
        return other;
      }
      const worked = await work(latest);
      if (!worked.ok || !worked.undo) return worked;
      const changed = { ...worked, said: history.said(latest, worked) };
      if (history.asks(changed) && !(await accept(changed, history.leave))) return TAKEN_BACK;
      const { document, documentId = latest.documentId } = changed;
      const record = { ...latest, document, documentId, ...history.kept(latest, changed) };
      const kept = await along(latest, record, (more) => database.keepProject(record, { ...more, pictures }));
      if (!kept) continue;
      tellOthers({ id: kept.id });
      await view(kept);
      return { ...changed, step: kept.revision };
    }
  }

  async function begun(name = "My project") {
    const made = await ask({ do: "change", document: null, act: dated({ act: "begin", name }) });
    return made.ok ? fresh(made.document) : { failed: made };
  }

  const fresh = (document) => ({ id: freshId(), revision: 0, document, undo: [], redo: [] });

  async function addNew(record, pictures = {}) {
    if (record.failed) return record.failed;
    await view(await database.keepProject(record, { pictures }));
    return { ok: true };
  }

  function safely(work) {
    queue = queue.then(() => work().catch(refusedByStore));
    return queue;
  }

  function changedElsewhere(news) {
    const { record } = state.get();
    if (news.id !== record?.id) return;
    if (!news.dropped) return safely(() => open(news.id));
    safely(leave).then(() => dropped(record));
  }

  return {
    change: (act, how) => safely(() => make((latest) => worked(latest, act), how)),
    /** The same for a message that answers as a change does: `message(document)` makes it. */
    changeBy: (message, how) => safely(() => make(({ document }) => ask(message(document)), how)),
    undo: (of) => safely(() => make((latest) => stepped(latest, latest.undo), { history: back(), of })),
    /** Takes back one step and nothing else: the `step` of the answer to a change, whatever was done after it. */
    undoStep: (step, of) => safely(() => make((latest) => steppedOne(latest, step), { history: back(step), of })),
    redo: (of) => safely(() => make((latest) => stepped(latest, latest.redo), { history: again, of })),
    open: (id) => safely(() => open(id)),
    begin: (name) => safely(async () => addNew(await begun(name))),
    /** A document from a backup as a project of its own, with its pictures. */
    add: (document, pictures) => safely(() => addNew(fresh(document), pictures)),
    /** Draw it again, as after another order at the saw. */
    look: () => safely(() => open(state.get().record.id)),
    /** Resolves with the open record once no change to it is on its way. */
    settled: () => queue.then(() => state.get().record),
    /**
     * Write the open one once more where the store was erased.
     * @returns {Promise<object | null>} an answer, or null where it is still there
     */
    keepAgain: () =>
      safely(async () => {
        const { record } = state.get();
        if (!record || (await database.project(record.id))) return null;
        const kept = await database.keepProject(record);
        await (kept ? view(kept) : open(record.id));
        return { ok: true };
      }),
    all: () => database.projects(),
    /** For good: only a backup brings it back. */
    drop: (id) =>
      safely(async () => {
        await database.dropProject(id);
        tellOthers({ id, dropped: true });
        if (id === state.get().record?.id) await leave();
        return { ok: true };
      }),
  };
}
