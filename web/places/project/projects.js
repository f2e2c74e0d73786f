import { button, element } from "../../widgets/element.js";
import { confirm } from "../../widgets/messages/confirm.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { go, onward } from "../go.js";
import { notice, quietly } from "../notices.js";

/** All projects: open another, begin one, delete one. */
export function projects(app) {
  const list = element("ul", { class: "entries" });

  async function open(id) {
    const goOn = onward();
    await app.projects.open(id);
    goOn("project");
  }

  async function begin(name) {
    const answer = await app.projects.begin(name);
    if (answer.ok) go("project");
    return answer;
  }

  async function drop({ id }, name) {
    const sentence = "It is gone for good: only a backup brings it back.";
    const sure = await confirm({ title: `Delete ${name}?`, sentence, act: `Delete ${name}` });
    if (!sure) return;
    const answer = await quietly(app.projects.drop(id));
    if (answer.ok) notice(`Deleted ${name}.`);
    draw();
  }

  function row(each) {
    const { name } = each.document;
    const isOpen = each.id === app.state.get().record?.id;
    const called = isOpen ? `${name}, the open one` : name;
    return element(
      "li",
      { class: "project-row" },
      button(name, () => open(each.id), { class: "button wide", "aria-current": isOpen ? "true" : null }),
      button("Delete", () => drop(each, called), { class: "button quiet", "aria-label": `Delete ${called}` }),
    );
  }

  const draw = () => app.projects.all().then((all) => list.replaceChildren(...all.map(row)));

  draw();
  const node = element(
    "div",
    { class: "project" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, "Projects"),
    list,
    button("New project", () => nameDialog({ title: "New project", act: "Begin", give: begin }), {
      class: "button primary",
    }),
  );
  return { node };
}
