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
import { projectKeeper } from "./store/project/project.js";

let state = null;
let kept = null;
const core = startCore({ onState: (now) => state?.set({ core: now }) });
let refused = null;

const onBlocked = () =>
  waiting("Sawside is open in another tab, with an older store. Close that tab: then it opens here.");
// It may be erased before there is anything to keep again.
const onErased = () => kept && erased(kept);
const database = await openDatabase({ onBlocked, onErased }).catch((error) => {
  refused = error;
  return memoryDatabase();
});
const page = await database.page();
const record = page.openProject ? await database.project(page.openProject) : null;
const shown = { ...page, record, view: record ? page.view : null, core: core.state() };
state = createState(shown, database.keepPage, storeRefused);

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
kept = { state, tally, projects };
const acceptUpdate = () => offline.acceptUpdate();
shell({ ...kept, ask: core.ask, entering, photo: database.photo, acceptUpdate });
if (refused) storeRefused(refused);
if (page.openProject && !record) projectGone();
askToStay(state);

const strip = () => core.ask({ do: "strip", settings: settings() }).then((strip) => state.set({ strip }));
const first = strip();
state.subscribe((changed) => changed.includes("record") && strip());
if (record) projects.look();
entering.run();
// What is typed meanwhile is answered first: all the questions take the core a moment to read.
const described = first.then(() => core.ask({ do: "describe" }));
described.then((described) => state.set({ described, describedNow: true }));
const offline = keepOffline({ onState: (now) => state.set({ offline: now }), after: described });
