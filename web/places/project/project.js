import { isUnkept } from "../../store/project/draft.js";
import { button, element } from "../../widgets/element.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { folded } from "../../widgets/project/folded.js";
import { goToLine, keptLine, neighborOf } from "../../widgets/project/kept-line.js";
import { stepRow } from "../../widgets/project/steps.js";
import { nextStep } from "../check-list/next-step.js";
import { nothingYet } from "../forms/instead.js";
import { leftToFill, placeOf, stepsOf } from "../forms/to-fill.js";
import { go } from "../go.js";
import { inWords } from "../notices.js";
import { caseFolds } from "./case-fold.js";
import { entryActs, typedIn } from "./entry-acts.js";
import { folding, groupsOf } from "./groups.js";
import { projectFoot } from "./project-foot.js";
import { projectHead } from "./project-head.js";

/** @import { Entry } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

const NONE = "Nothing saved yet. Save a reading from the Pad or an answer from Solve.";

/**
 * What is kept in groups that fold: readings, answers, pieces, renamed, reopened, corrected, deleted with undo.
 * @param {App} app
 * @param {string} [landOn] the entry to go to
 */
export function project(app, landOn) {
  const node = element("div", { class: "project" });
  const acts = listActs(app, node);
  const folds = folding(app.state);
  const name = () => app.state.get().record?.document.name ?? "My project";

  function draw() {
    const groups = groupsOf(app.state.get());
    const row = (/** @type {Entry} */ entry) =>
      keptLine(lineOf(app, entry), [
        ...entryActs(app, entry),
        button("Rename", () => acts.rename(entry)),
        button("Delete", () => acts.remove(entry.id), { "aria-label": `Delete ${entry.name}` }),
      ]);
    const drawn = groups.map((group) => {
      const onFold = (/** @type {boolean} */ isOpen) => folds.fold(group, isOpen);
      return folded({ ...group, isOpen: folds.isOpen(group), onFold }, group.entries.map(row));
    });
    node.replaceChildren(
      ...projectHead(app, { name: name(), rename: acts.renameProject }),
      ...nextStep(app),
      ...stepsToFill(app),
      ...caseFolds(app),
      ...(drawn.length ? drawn : [nothingYet(app, NONE)]),
      projectFoot(app),
    );
  }

  draw();
  return {
    node,
    title: name,
    refresh: (/** @type {string[]} */ changed) =>
      ["view", "record", "backups"].some((key) => changed.includes(key)) && draw(),
    land: () => landOn && goToLine(node, landOn),
  };
}

/**
 * What is to be filled in, step by step; nothing where all is.
 * @param {App} app
 */
function stepsToFill(app) {
  const steps = stepsOf(app.state.get().view?.entries ?? []);
  const told = steps.map(({ entry, leadsTo, ...step }) => ({
    ...step,
    name: entry.name,
    open: () => go(placeOf(app.state.get(), leadsTo)),
  }));
  return told.length ? [stepRow(told)] : [];
}

/**
 * An entry as a line of the list.
 * @param {App} app
 * @param {Entry} entry
 */
const lineOf = (app, entry) => ({
  ...entry,
  value: entry.headline,
  summary: [entry.ok ? saying(entry) : typedIn(app, entry.id), entry.where].filter(Boolean).join(", "),
  fault: entry.error && !entry.to_fill ? inWords(entry.error) : "",
  mark: [leftToFill(entry), isUnkept(app.state.get(), entry.id) ? "Unsaved edit" : ""].filter(Boolean).join(". "),
});

/**
 * What an entry was worked out from: nothing that stands beside it already.
 * @param {Entry} entry
 */
function saying({ kind, name, title, summary, headline }) {
  if (kind !== "line") return summary === headline?.text ? "" : summary;
  return name === title ? summary : `${title}: ${summary}`;
}

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
