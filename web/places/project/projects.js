import { button, element } from "../../widgets/element.js";
import { confirm } from "../../widgets/messages/confirm.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { go, onward } from "../go.js";
import { notice, quietly } from "../notices.js";

/** @import { ProjectRecord } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * All projects: open another, begin one, delete one.
 * @param {App} app
 */
export function projects(app) {
  const list = element("ul", { class: "entries" });
  const draw = () =>
    app.projects.all().then((all) => list.replaceChildren(...all.map((record) => row(app, record, draw))));

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
    element("h2", {}, "All projects"),
    list,
    button("New project", ask, { class: "button primary" }),
  );
  return { node };
}

/**
 * One project; `draw` the list again when it is gone.
 * @param {App} app
 * @param {ProjectRecord} record
 * @param {() => void} draw
 */
function row(app, { id, document: { name } }, draw) {
  const isOpen = id === app.state.get().record?.id;
  const called = isOpen ? `${name}, open now` : name;

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

  return element(
    "li",
    { class: "project-row" },
    button(name, open, { class: "button wide", "aria-current": isOpen ? "true" : null }),
    button("Delete", drop, { class: "button quiet", "aria-label": `Delete ${called}` }),
  );
}
