/** Start-up order: store, last state on the screen, core, offline copy. */
import { keepOffline } from "./offline/register.js";
import { shell } from "./places/shell.js";
import { startCore } from "./python/client.js";
import { memoryDatabase, openDatabase } from "./store/database.js";
import { projectKeeper } from "./store/project.js";
import { createState } from "./store/state.js";
import { tallyKeeper } from "./store/tally.js";

let state = null;
const core = startCore({ onState: (now) => state?.set({ core: now }) });
let refused = null;

const database = await openDatabase().catch((error) => {
  refused = error;
  return memoryDatabase();
});
const page = await database.page();
const record = page.openProject ? await database.project(page.openProject) : null;
state = createState({ ...page, record, core: core.state() }, database.keepPage, (error) => app.storeRefused(error));

const settings = () => state.get().record?.document.settings ?? {};
const tally = tallyKeeper({ state, ask: core.ask, settings, keepSurely: database.keepPageSurely });
const projects = projectKeeper({ database, state, ask: core.ask });
const app = shell({ state, ask: core.ask, projects, tally, settings });
if (refused) app.storeRefused(refused);

const strip = () => core.ask({ do: "strip", settings: settings() }).then((strip) => state.set({ strip }));
strip();
state.subscribe((changed) => changed.includes("record") && strip());
core.ask({ do: "describe" }).then((described) => state.set({ described }));
if (record) core.ask({ do: "view", document: record.document }).then((view) => state.set({ view }));
app.offline = keepOffline({ onState: (now) => state.set({ offline: now }) });
