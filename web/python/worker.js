/** The worker that runs Python; its messages are in protocol.js. */
import { say } from "./protocol.js";
import { settle } from "./settle.js";
import { slowStart } from "./slow-start.js";
import { makeSnapshot } from "./snapshot-make.js";
import { restoreSnapshot } from "./snapshot-restore.js";

let core = null;
const arrive = {};
const code = new Promise((resolve) => (arrive.code = resolve));
const pages = new Promise((resolve) => (arrive.pages = resolve));

const tasks = {
  async slow() {
    core = { way: "slow", ...(await slowStart((now) => say("progress", now))) };
    say("ready");
  },

  async restore({ facts }) {
    core = { way: "snapshot", ...(await restoreSnapshot({ facts, code, pages })) };
    say("ready");
  },

  code: (part) => arrive.code(part.code),
  memory: (part) => arrive.pages(part.pages),

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

  async keep() {
    await makeSnapshot();
    say("kept");
  },
};

self.onmessage = async ({ data }) => {
  try {
    await tasks[data.ask](data);
  } catch (error) {
    say("failed", { reason: String(error) });
  }
};
