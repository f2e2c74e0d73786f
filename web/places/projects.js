import { button, element } from "../widgets/element.js";
import { nameDialog } from "../widgets/name-dialog.js";

/** All projects: open another, or begin one. */
export function projects(app) {
  const list = element("ul", { class: "entries" });

  async function open(id) {
    await app.projects.open(id);
    app.go("project");
  }

  async function begin(name) {
    const answer = await app.projects.begin(name);
    if (answer.ok) app.go("project");
    return answer;
  }

  app.projects.all().then((all) =>
    list.replaceChildren(
      ...all.map((each) => {
        const current = each.id === app.state.get().record?.id ? "true" : null;
        return element(
          "li",
          {},
          button(each.document.name, () => open(each.id), { class: "button wide", "aria-current": current }),
        );
      }),
    ),
  );
  return element(
    "div",
    { class: "project" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, "Projects"),
    list,
    button("New project", () => nameDialog({ title: "New project", act: "Begin", give: begin }), {
      class: "button primary",
    }),
  );
}
