import { recentFirst } from "../../store/project/projects-last-opened.js";
import { dayOf } from "../../store/project/when.js";
import { button, element } from "../../widgets/element.js";
import { confirm } from "../../widgets/messages/confirm.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { go, onward } from "../go.js";
import { notice, quietly } from "../notices.js";
import { newCase } from "./new-case.js";
import { sampleCase } from "./sample-case.js";

/** @import { ProjectRecord } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */

const TITLE = "All projects";

/**
 * All projects, the last opened first: open another, start one, restore one, delete one.
 * @param {App} app
 */
export function projects(app) {
  const list = element("ul", { class: "entries" });
  async function draw() {
    const all = recentFirst(await app.projects.all(), app.state.get());
    list.replaceChildren(...all.map((record) => row(app, record, draw)));
  }

  /** @param {string} name */
  async function begin(name) {
    const answer = await app.projects.begin(name);
    if (answer.ok) go("project");
    return answer;
  }

  const ask = () => nameDialog({ title: "New project", act: "Start", give: begin });
  draw();
  const node = element(
    "div",
    { class: "project" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, TITLE),
    element(
      "div",
      { class: "button-row" },
      button("New project", ask, { class: "button primary" }),
      button("Restore a backup", () => go("restore")),
    ),
    list,
    element("div", { class: "button-row" }, newCase(app), sampleCase(app)),
  );
  return { node, title: () => TITLE };
}

/**
 * What is said of a project below its name: whether it is open, when it was, and what is left to cut.
 * @param {{isOpen: boolean, at?: number, left?: number}} project
 */
function about({ isOpen, at, left }) {
  const opened = isOpen ? "Open now" : at && `Last opened ${dayOf(at)}`;
  const pieces = left === 1 ? "1 piece left to cut" : `${left} pieces left to cut`;
  return [opened, left ? pieces : ""].filter(Boolean).join(", ");
}

/**
 * One project; `draw` the list again when it is gone.
 * @param {App} app
 * @param {ProjectRecord} record
 * @param {() => void} draw
 */
function row(app, { id, document: { name } }, draw) {
  const { record, lastOpened } = app.state.get();
  const isOpen = id === record?.id;
  const called = isOpen ? `${name}, open now` : name;
  const told = about({ isOpen, ...lastOpened[id] });

  async function open() {
    const goOn = onward();
    await app.projects.open(id);
    goOn("project");
  }

  async function drop() {
    const sentence = "This can’t be undone. Only a backup can bring it back.";
    const sure = await confirm({ title: `Delete ${called}?`, sentence, act: `Delete ${called}` });
    if (!sure) return;
    const answer = await quietly(app.projects.drop(id));
    if (answer.ok) notice(`Deleted ${called}.`);
    draw();
  }

  const aboutId = `about-${id}`;
  const opening = {
    type: "button",
    class: "button wide project-open",
    onclick: open,
    "aria-describedby": aboutId,
    "aria-current": isOpen ? "true" : null,
  };
  return element(
    "li",
    { class: "project-row" },
    element(
      "button",
      opening,
      element("strong", {}, name),
      // Heard as what describes the button, and so not in its name again.
      element("span", { class: "project-about", id: aboutId, "aria-hidden": "true" }, told),
    ),
    button("Delete", drop, { class: "button quiet", "aria-label": `Delete ${called}` }),
  );
}
