/** Start-up order: store, last state on the screen, core, offline copy. */
import { keepOffline } from "./offline/register.js";
import { dropped, erased, projectGone, storeRefused } from "./places/news.js";
import { accept, shell, waiting } from "./places/shell.js";
import { startCore } from "./python/client.js";
import { enteringKeeper } from "./store/pad/entering.js";
import { tallyKeeper } from "./store/pad/tally.js";
import { openDatabase } from "./store/page/database.js";
import { memoryDatabase } from "./store/page/memory.js";
import { askToStay } from "./store/page/persist.js";
import { createState } from "./store/page/state.js";
import { draftsOfToday } from "./store/project/of-before.js";
import { projectKeeper } from "./store/project/project.js";

/** @import { CoreState } from "./python/core.d.ts" */

/** What is told before there is anything to do with it needs nothing done. */
const early = {
  core: (/** @type {CoreState} */ _now) => {},
  erased: () => {},
};
const core = startCore({ onState: (now) => early.core(now) });
/** @type {Error | null} */
let refused = null;

const onBlocked = () => waiting("Sawside is open in another tab. Close that tab and it will open here.");
const database = await openDatabase({ onBlocked, onErased: () => early.erased() }).catch((error) => {
  refused = error;
  return memoryDatabase();
});
const page = await database.page();
const record = (page.openProject && (await database.project(page.openProject))) || null;
const shown = { ...page, record, view: record && page.view, core: core.state() };
const state = createState(shown, database.keepPage, storeRefused);
early.core = (now) => state.set({ core: now });

const settings = () => state.get().record?.document.settings ?? {};
const tally = tallyKeeper({ state, ask: core.ask, settings, database });
const entering = enteringKeeper({ state, tally, database });
const projects = projectKeeper({
  database,
  state,
  ask: core.ask,
  accept,
  dropped: (record) => dropped(state, record),
  along: tally.along,
});
early.erased = () => erased({ state, tally, projects });
const acceptUpdate = () => offline.acceptUpdate();
shell({ state, tally, projects, ask: core.ask, entering, photo: database.photo, acceptUpdate });
if (refused) storeRefused(refused);
if (page.openProject && !record) projectGone();
askToStay(state);

/** One that is refused, as after a fault, leaves what was there. */
async function strip() {
  const strip = await core.ask({ do: "strip", settings: settings() });
  if (strip.ok) state.set({ strip });
}
const first = strip();
state.subscribe((changed) => changed.includes("record") && strip());
if (record) projects.look();
entering.run();
// What is typed meanwhile is answered first: all the questions take the core a moment to read.
const described = first.then(() => core.ask({ do: "describe" }));
described.then(async (described) => {
  if (!described.ok) return;
  await draftsOfToday({ state, ask: core.ask }, described.reckoners);
  state.set({ described, describedNow: true });
});
const offline = keepOffline({ onState: (now) => state.set({ offline: now }), after: described });
