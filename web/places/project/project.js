import { isUnkept } from "../../store/project/draft.js";
import { button, element } from "../../widgets/element.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { goToLine, keptLine, neighborOf } from "../../widgets/project/kept-line.js";
import { nothingYet } from "../forms/instead.js";
import { entryActs, typedIn } from "./entry-acts.js";
import { projectFoot } from "./project-foot.js";
import { projectHead } from "./project-head.js";

/** What is kept: readings and worked lines, renamed, reopened, corrected, deleted with undo. */
export function project(app, landOn) {
  const node = element("div", { class: "project" });
  const entries = () => app.state.get().view?.entries ?? [];

  function draw() {
    const { record } = app.state.get();
    node.replaceChildren(
      element("h2", { tabindex: "-1" }, record?.document.name ?? "My project"),
      ...projectHead(app, { rename: renameProject }).filter(Boolean),
      entries().length
        ? element("ul", { class: "entries" }, entries().map(row))
        : nothingYet(app, "Nothing kept yet. Keep a reading from the Pad, or an answer from Work out."),
      projectFoot(app),
    );
  }

  const row = (entry) =>
    keptLine(
      {
        ...entry,
        value: entry.headline,
        summary: `${entry.title}: ${[entry.summary || typedIn(app, entry.id), entry.where].filter(Boolean).join(", ")}`,
        fault: entry.error ? `${entry.error.message} ${entry.error.remedy ?? ""}` : "",
        mark: isUnkept(app.state.get(), entry.id) ? "Correction typed, not kept" : "",
      },
      [...entryActs(app, entry), button("Rename", () => rename(entry)), button("Delete", () => remove(entry.id))],
    );

  async function remove(id) {
    const next = neighborOf(entries(), id);
    const answer = await app.project.change({ act: "delete", id });
    if (answer.ok) goToLine(node, next);
  }

  const rename = ({ id, name }) =>
    nameDialog({
      title: `Rename ${name}`,
      act: "Rename",
      name,
      give: (given) => app.project.change({ act: "rename", id, name: given }),
      after: () => goToLine(node, id),
    });

  const renameProject = () =>
    nameDialog({
      title: "Rename the project",
      act: "Rename",
      name: app.state.get().view?.name ?? "",
      give: (name) => app.project.change({ act: "rename_project", name }),
      after: () => goToLine(node, null),
    });

  draw();
  return {
    node,
    refresh: (changed) => ["view", "record", "backups"].some((key) => changed.includes(key)) && draw(),
    land: () => landOn && goToLine(node, landOn),
  };
}
