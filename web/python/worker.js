/** The worker that runs Python; its messages are in protocol.js. */
import { FIRST_QUESTION, say } from "./protocol.js";
import { settle } from "./snapshot/settle.js";
import { makeSnapshot } from "./snapshot/snapshot-make.js";
import { restoreSnapshot } from "./snapshot/snapshot-restore.js";
import { addRest, slowStart } from "./start/slow-start.js";

/** @import { Started } from "./core.d.ts" */

/** @type {Started | null} */
let core = null;
let turn = Promise.resolve();
const arrive = {};
const code = new Promise((resolve) => (arrive.code = resolve));
const pages = new Promise((resolve) => (arrive.pages = resolve));

const tell = (now) => say("progress", now);

/** The core that runs: nothing is asked of one before it has said that it is ready. */
function running() {
  if (!core) throw new Error("The core does not run yet.");
  return core;
}

/** Resolve once every question can be answered: what the first one did without is fetched once. */
function whole() {
  const own = running();
  own.whole ??= addRest(own, tell).then(() => say("whole"));
  return own.whole;
}

async function answer({ id, text }) {
  if (text !== FIRST_QUESTION) await whole();
  const own = running();
  let said = own.handle(text);
  // A failure of ours may be for want of a file that a quick start does without.
  if (!own.settled && said.includes('"kind":"internal"')) {
    await tasks.settle();
    said = own.handle(text);
  }
  say("answer", { id, text: said });
}

const tasks = {
  async slow() {
    core = { way: "slow", ...(await slowStart(tell)) };
    say("ready");
  },

  async restore({ facts }) {
    core = { way: "snapshot", whole: Promise.resolve(), ...(await restoreSnapshot({ facts, code, pages })) };
    say("ready");
    say("whole");
  },

  code: (part) => arrive.code(part.code),
  memory: (part) => arrive.pages(part.pages),

  question(asked) {
    turn = turn.then(() => answer(asked));
    return turn;
  },

  rest() {
    turn = turn.then(whole);
    return turn;
  },

  settle() {
    // What fails for want of a network is tried again when it is next wanted.
    const own = running();
    own.settled ??= settle(own).catch(() => {
      own.settled = null;
    });
    return own.settled;
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
