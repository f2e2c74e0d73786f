import { thisMinute } from "../../store/project/when.js";
import { canShareFiles, download, share } from "../../widgets/device/give-file.js";
import { gzipped } from "../../widgets/device/gzip.js";
import { button, element } from "../../widgets/element.js";
import { notice, quietly } from "../notices.js";
import { restoring } from "./restoring.js";
import { tables } from "./tables.js";

/** The project as one file: out to the downloads or the share sheet, and in again; tables as CSV. */
export function backup(app) {
  const { record } = app.state.get();
  const node = element(
    "div",
    { class: "project" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, "Back up"),
    record ? out(app) : null,
    element("h2", {}, "Restore"),
    restoring(app),
    record ? tables(app) : null,
  );
  return { node };
}

function out(app) {
  const last = element("p", { class: "help" });
  const draw = () => {
    const { record, backups } = app.state.get();
    const kept = backups[record.id];
    const when = kept?.when ? ` ${kept.when.replace("T", " ")}` : ", at a time that isn’t known";
    last.textContent = kept ? `Last backed up${when}.` : "Not backed up yet.";
  };

  async function give(way, form = (made) => made) {
    const record = await app.projects.settled();
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
      "One file with the whole project, its photos and its log. Keep it somewhere else than on this phone.",
    ),
    element(
      "div",
      { class: "button-row" },
      button("Download", () => give(download), { class: "button primary" }),
      button("Download, compressed", () => give(download, compressed)),
      canShareFiles() ? button("Share", () => give(share)) : null,
    ),
    last,
  );
}

const compressed = async ({ name, text }) => ({
  name: `${name}.gz`,
  type: "application/gzip",
  text: await gzipped(text),
});

async function makeBackup(app, { document }) {
  const keys = document.entries.flatMap(({ photo }) => (photo ? [photo] : []));
  const pictures = await Promise.all(keys.map(async (key) => [key, await app.photo(key)]));
  const photos = Object.fromEntries(pictures.filter(([, address]) => address));
  return app.ask({ do: "backup", document, when: thisMinute(), photos });
}
