/** Start-up order: store, last state on the screen, core, offline copy. */
import { keepOffline } from "./offline/register.js";
import { shell, waiting } from "./places/shell.js";
import { startCore } from "./python/client.js";
import { enteringKeeper } from "./store/pad/entering.js";
import { tallyKeeper } from "./store/pad/tally.js";
import { openDatabase } from "./store/page/database.js";
import { memoryDatabase } from "./store/page/memory.js";
import { askToStay } from "./store/page/persist.js";
import { createState } from "./store/page/state.js";
import { projectKeeper } from "./store/project/project.js";

/** @import { CoreState } from "./python/core.d.ts" */

/** What is told before there is a screen to tell it on is read there when there is one. */
const early = {
  core: (/** @type {CoreState} */ _now) => {},
  erased: () => {},
};
const core = startCore({ onState: (now) => early.core(now) });
/** @type {Error | null} */
let refused = null;

const onBlocked = () =>
  waiting("Sawside is open in another tab, with an older store. Close that tab: then it opens here.");
const database = await openDatabase({ onBlocked, onErased: () => early.erased() }).catch((error) => {
  refused = error;
  return memoryDatabase();
});
const page = await database.page();
const record = (page.openProject && (await database.project(page.openProject))) || null;
const shown = { ...page, record, view: record && page.view, core: core.state() };
const state = createState(shown, database.keepPage, (error) => app.storeRefused(error));
early.core = (now) => state.set({ core: now });

const settings = () => state.get().record?.document.settings ?? {};
const tally = tallyKeeper({ state, ask: core.ask, settings, database });
const entering = enteringKeeper({ state, tally, database });
const projects = projectKeeper({
  database,
  state,
  ask: core.ask,
  accept: (changed, leave) => app.accept(changed, leave),
  dropped: (record) => app.dropped(record),
  along: tally.along,
});
/** @type {ReturnType<typeof shell>} */
const app = shell({ state, ask: core.ask, projects, tally, entering, settings, photos: database });
early.erased = () => app.erased();
if (refused) app.storeRefused(refused);
if (page.openProject && !record) app.projectGone();
askToStay(state);

const strip = async () => {
  const strip = await core.ask({ do: "strip", settings: settings() });
  if (strip.ok) state.set({ strip });
};
const first = strip();
state.subscribe((changed) => changed.includes("record") && strip());
if (record) projects.look();
entering.run();
// What is typed meanwhile is answered first: all the questions take the core a moment to read.
const described = first.then(() => core.ask({ do: "describe" }));
described.then((described) => described.ok && state.set({ described, describedNow: true }));
app.offline = keepOffline({ onState: (now) => state.set({ offline: now }), after: described });
