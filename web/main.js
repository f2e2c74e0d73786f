/** Start-up order: store, last state on the screen, core, offline copy. */
import { keepOffline } from "./offline/register.js";
import { dropped, erased, projectGone, storeRefused } from "./places/news.js";
import { accept, shell, waiting } from "./places/shell.js";
import { core, description, hearCore } from "./python/begun.js";
import { secondCore } from "./python/second-core.js";
import { enteringKeeper } from "./store/pad/entering.js";
import { tallyKeeper } from "./store/pad/tally.js";
import { openDatabase } from "./store/page/database.js";
import { memoryDatabase } from "./store/page/memory.js";
import { askToStay } from "./store/page/persist.js";
import { createState } from "./store/page/state.js";
import { draftsOfToday } from "./store/project/of-before.js";
import { planningKeeper } from "./store/project/planning.js";
import { projectKeeper } from "./store/project/project.js";

/** In milliseconds, before the page is drawn without what it waits for. */
const LONGEST_WAIT = 1000;
/** Before there is anything to lose, nothing is done of it. */
let onErased = () => {};
/** @type {Error | null} */
let refused = null;

const onBlocked = () => waiting("Sawside is open in another tab. Close that tab and it will open here.");
const database = await openDatabase({ onBlocked, onErased: () => onErased() }).catch((error) => {
  refused = error;
  return memoryDatabase();
});
const page = await database.page();
// An earlier version kept there what is a file of the build now.
if (page.described) database.keepPage("described", undefined).catch(storeRefused);
const record = (page.openProject && (await database.project(page.openProject))) || null;
const shown = { ...page, described: null, record, view: record && page.view, core: core.state() };
const state = createState(shown, database.keepPage, storeRefused);
hearCore((now) => state.set({ core: now }));

const isDescribed = description.then(async ({ described, strip }) => {
  // Keys that are there from the first do not move when the core gives its own strip.
  if (!state.get().record) state.set({ strip: state.get().strip ?? strip });
  await draftsOfToday({ state, ask: core.ask }, described.reckoners);
  state.set({ described });
});
// Who was here before finds what was open as it was left; the file is on the device by then.
const isNew = Object.keys(page).length === 0;
if (!isNew) await Promise.race([isDescribed, new Promise((resolve) => setTimeout(resolve, LONGEST_WAIT))]);

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
const planning = planningKeeper({ state, ask: core.ask, second: secondCore() });
onErased = () => erased({ state, tally, projects });
const acceptUpdate = () => offline.acceptUpdate();
shell({ state, tally, projects, planning, ask: core.ask, entering, photo: database.photo, acceptUpdate });
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
const offline = keepOffline({ onState: (now) => state.set({ offline: now }), after: Promise.all([first, core.whole]) });
