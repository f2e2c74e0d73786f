import { isUnkept } from "../../store/project/draft.js";
import { button, element, present } from "../../widgets/element.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { goToLine, keptLine, neighborOf } from "../../widgets/project/kept-line.js";
import { nothingYet } from "../forms/instead.js";
import { inWords } from "../notices.js";
import { entryActs, typedIn } from "./entry-acts.js";
import { projectFoot } from "./project-foot.js";
import { projectHead } from "./project-head.js";

/** @import { Entry } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

const NONE = "Nothing saved yet. Save a reading from the Pad or an answer from Solve.";

/**
 * What is kept: readings and worked lines, renamed, reopened, corrected, deleted with undo.
 * @param {App} app
 * @param {string} [landOn] the entry to go to
 */
export function project(app, landOn) {
  const node = element("div", { class: "project" });
  const acts = listActs(app, node);

  function draw() {
    const { record, view } = app.state.get();
    const entries = view?.entries ?? [];
    const row = (/** @type {Entry} */ entry) =>
      keptLine(lineOf(app, entry), [
        ...entryActs(app, entry),
        button("Rename", () => acts.rename(entry)),
        button("Delete", () => acts.remove(entry.id)),
      ]);
    node.replaceChildren(
      element("h2", { tabindex: "-1" }, record?.document.name ?? "My project"),
      ...present(projectHead(app, { rename: acts.renameProject })),
      entries.length ? element("ul", { class: "entries" }, entries.map(row)) : nothingYet(app, NONE),
      projectFoot(app),
    );
  }

  draw();
  return {
    node,
    refresh: (/** @type {string[]} */ changed) =>
      ["view", "record", "backups"].some((key) => changed.includes(key)) && draw(),
    land: () => landOn && goToLine(node, landOn),
  };
}

/**
 * An entry as a line of the list.
 * @param {App} app
 * @param {Entry} entry
 */
const lineOf = (app, entry) => ({
  ...entry,
  value: entry.headline,
  summary: `${entry.title}: ${[entry.summary || typedIn(app, entry.id), entry.where].filter(Boolean).join(", ")}`,
  fault: entry.error ? inWords(entry.error) : "",
  mark: isUnkept(app.state.get(), entry.id) ? "Unsaved edit" : "",
});

/**
 * What is done to an entry, or to the project, where the `list` stands; each leads to the line that it was about.
 * @param {App} app
 * @param {HTMLElement} list
 */
function listActs(app, list) {
  /** @param {string} id */
  async function remove(id) {
    const next = neighborOf(app.state.get().view?.entries ?? [], id);
    const answer = await app.project.change({ act: "delete", id });
    if (answer.ok) goToLine(list, next);
  }

  const rename = (/** @type {Entry} */ { id, name }) =>
    nameDialog({
      title: `Rename ${name}`,
      act: "Rename",
      name,
      give: (given) => app.project.change({ act: "rename", id, name: given }),
      after: () => goToLine(list, id),
    });

  const renameProject = () =>
    nameDialog({
      title: "Rename the project",
      act: "Rename",
      name: app.state.get().view?.name ?? "",
      give: (name) => app.project.change({ act: "rename_project", name }),
      after: () => goToLine(list),
    });

  return { remove, rename, renameProject };
}
