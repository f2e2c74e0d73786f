import { button, element } from "../widgets/element.js";
import { form } from "../widgets/form.js";
import { offlineSentence } from "../widgets/status.js";

/** How lengths are read and shown in the open project, and whether the app is ready without network. */
export function settings(app) {
  const state = app.state.get();
  const ready = element("p", { class: "help" });
  const fields = state.described?.settings ?? [];
  const drawn = form({
    fields,
    values: app.settings(),
    onInput: (values) => app.change({ act: "set", settings: values }),
  });
  const update = button("Use the new version", () => app.offline.acceptUpdate(), { class: "button primary" });

  function draw() {
    const { offline, described } = app.state.get();
    ready.textContent = `${offlineSentence(offline)} Version ${described?.version ?? "…"}.`;
    update.hidden = !offline?.update;
  }

  draw();
  const node = element(
    "div",
    { class: "settings" },
    element("h2", {}, "Settings of this project"),
    drawn.node,
    element("h2", {}, "This app"),
    ready,
    update,
  );
  node.refresh = draw;
  return node;
}
