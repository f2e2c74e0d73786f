/**
 * The open project. Each change is worked out by the core, written with strict durability, and only
 * then shown. Changes run one after another; when another tab was first, ours is made again on its.
 */
export function projectKeeper({ database, state, ask }) {
  const channel = new BroadcastChannel("sawside-projects");
  let queue = Promise.resolve();

  async function view(record) {
    const seen = await ask({ do: "view", document: record.document });
    state.set({ record, openProject: record.id, view: seen });
  }

  async function make(act, { history }) {
    for (;;) {
      const open = state.get().record;
      const latest = open ? ((await database.project(open.id)) ?? open) : await begun();
      if (latest.failed) return latest.failed;
      const changed = await ask({ do: "change", document: latest.document, act: act(latest) });
      if (!changed.ok) return changed;
      const record = { ...latest, document: changed.document, ...history(latest, changed.undo) };
      const kept = await database.keepProject(record);
      if (!kept) continue;
      channel.postMessage({ id: kept.id });
      await view(kept);
      return changed;
    }
  }

  async function begun(name = "My project") {
    const made = await ask({ do: "change", document: null, act: { act: "begin", name } });
    return made.ok
      ? { id: crypto.randomUUID(), revision: 0, document: made.document, undo: [], redo: [] }
      : { failed: made };
  }

  const inTurn = (work) => (queue = queue.then(work, work));
  const refusedByStore = (error) => ({
    ok: false,
    error: {
      kind: "store",
      message: `This could not be kept: ${error.message}`,
      remedy: "Free some space on the device, then try again. What you typed is still here.",
    },
  });
  const safely = (work) => inTurn(() => work().catch((error) => refusedByStore(error)));

  channel.onmessage = ({ data }) => {
    if (data.id === state.get().record?.id) inTurn(async () => view(await database.project(data.id)));
  };

  return {
    change: (act) =>
      safely(() => make(() => act, { history: (old, undo) => ({ undo: [...old.undo, undo], redo: [] }) })),
    undo: () =>
      safely(() =>
        make((old) => old.undo.at(-1), {
          history: (old, redo) => ({ undo: old.undo.slice(0, -1), redo: [...old.redo, redo] }),
        }),
      ),
    redo: () =>
      safely(() =>
        make((old) => old.redo.at(-1), {
          history: (old, undo) => ({ undo: [...old.undo, undo], redo: old.redo.slice(0, -1) }),
        }),
      ),
    open: (id) =>
      safely(async () => {
        await view(await database.project(id));
        return { ok: true };
      }),
    begin: (name) =>
      safely(async () => {
        const record = await begun(name);
        if (record.failed) return record.failed;
        await view(await database.keepProject(record));
        return { ok: true };
      }),
    all: () => database.projects(),
  };
}
