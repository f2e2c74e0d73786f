/** The worker that runs Python; its name and its messages are in protocol.js. */
import { KEEP, SLOW, say } from "./protocol.js";
import { settle } from "./settle.js";
import { slowStart } from "./slow-start.js";
import { makeSnapshot } from "./snapshot-make.js";
import { restoreSnapshot } from "./snapshot-restore.js";
import { findSnapshot } from "./snapshot-store.js";

let core = null;

async function start() {
  // Without storage there is no snapshot to be found, and all else still works.
  const found = self.name === SLOW ? null : await findSnapshot().catch(() => null);
  const way = found ? "snapshot" : "slow";
  const onProgress = (now) => say("progress", { way, ...now });
  onProgress({ step: "Waking the arithmetic", loaded: 0, total: 0 });
  core = { way, ...(await (found ? restoreSnapshot(found) : slowStart(onProgress))) };
  say("ready", { way });
}

async function keep() {
  await makeSnapshot();
  say("kept");
}

const tasks = {
  async question({ id, text }) {
    let answer = core.handle(text);
    // A failure of ours may be for want of a file that a quick start does without.
    if (!core.settled && answer.includes('"kind":"internal"')) {
      await tasks.settle();
      answer = core.handle(text);
    }
    say("answer", { id, text: answer });
  },

  settle() {
    // What fails for want of a network is tried again when it is next wanted.
    core.settled ??= settle(core).catch(() => {
      core.settled = null;
    });
    return core.settled;
  },
};

const orFail = (task) => task.catch((error) => say("failed", { reason: String(error) }));
self.onmessage = ({ data }) => orFail(Promise.resolve(data).then(() => tasks[data.ask](data)));
orFail(self.name === KEEP ? keep() : start());
