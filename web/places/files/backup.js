import { thisMinute } from "../../store/project/when.js";
import { canShareFiles, download, share } from "../../widgets/device/give-file.js";
import { gzipped } from "../../widgets/device/gzip.js";
import { button, element, present } from "../../widgets/element.js";
import { notice, quietly } from "../notices.js";
import { restoring } from "./open-backup.js";
import { tables } from "./tables.js";

/** @import { Document, File } from "../../python/contract.d.ts" */
/** @import { Kept, ProjectRecord } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */

const TITLE = "Back up";

/**
 * The project as one file: out to the downloads or the share sheet, and in again; tables as CSV.
 * @param {App} app
 */
export function backup(app) {
  const { record } = app.state.get();
  const node = element(
    "div",
    { class: "project" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, TITLE),
    record ? out(app, record) : null,
    element("h2", {}, "Restore"),
    restoring(app),
    record ? tables(app) : null,
  );
  return { node, title: () => TITLE };
}

/**
 * @param {App} app
 * @param {ProjectRecord} opened
 */
function out(app, opened) {
  const last = element("p", { class: "help" });
  const draw = () => {
    const kept = app.state.get().backups[opened.id];
    const when = kept?.when ? ` ${kept.when.replace("T", " ")}` : ", time unknown";
    last.textContent = kept ? `Last backed up${when}.` : "Not backed up yet.";
  };

  /**
   * @param {(file: Given) => unknown} way
   * @param {(made: File) => Given | Promise<Given>} [form]
   */
  async function give(way, form = (made) => made) {
    const record = await app.projects.settled();
    if (!record) return;
    const made = await quietly(makeBackup(app, record));
    if (!made.ok) return;
    const file = await form(made);
    if ((await way(file)) === false) return;
    const kept = { revision: record.revision, when: thisMinute() };
    app.state.set({ backups: { ...app.state.get().backups, [record.id]: kept } });
    notice(`Backed up as ${file.name}.`);
    draw();
  }

  draw();
  return element(
    "section",
    { class: "project", "aria-label": "Back up this project" },
    element(
      "p",
      {},
      "One file with the whole project, photos and change log. Keep a copy somewhere other than this phone.",
    ),
    element(
      "div",
      { class: "button-row" },
      button("Download", () => give(download), { class: "button primary" }),
      button("Download compressed", () => give(download, compressed)),
      canShareFiles() ? button("Share", () => give(share)) : null,
    ),
    last,
  );
}

/** @typedef {{name: string, type: string, text: string | Blob}} Given what leaves as a file */

/**
 * @param {File} made
 * @returns {Promise<Given>}
 */
const compressed = async ({ name, text }) => ({
  name: `${name}.gz`,
  type: "application/gzip",
  text: await gzipped(text),
});

/**
 * The photos of an entry: of a reading its own, of a line those of its steps.
 * @param {Kept} entry
 * @returns {string[]}
 */
function photosOf(entry) {
  if (entry.kind === "line") return present(Object.values(entry.done ?? {}).map(({ photo }) => photo));
  return entry.kind === "reading" && entry.photo ? [entry.photo] : [];
}

/**
 * @param {App} app
 * @param {{document: Document}} record
 */
async function makeBackup(app, { document }) {
  const keys = document.entries.flatMap(photosOf);
  /** @type {Record<string, string>} */
  const photos = {};
  for (const key of keys) {
    const address = await app.photo(key);
    if (address) photos[key] = address;
  }
  return app.ask({ do: "backup", document, when: thisMinute(), photos });
}
