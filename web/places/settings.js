import { button, element } from "../widgets/element.js";
import { form } from "../widgets/form.js";
import { offlineSentence } from "../widgets/status.js";

/** How lengths are read and shown in the open project, and whether the app is ready without network. */
export function settings(app) {
  const ready = element("p", { class: "help" });
  const fields = app.state.get().described?.settings ?? [];
  let typed = app.settings();
  let kept = JSON.stringify(typed);
  const drawn = form({
    fields,
    values: typed,
    onInput: (values) => {
      typed = values;
    },
    onFocus: (input, { kind }) => app.sheet.open(input, { kind, unit: app.unit(), peek: () => ({ lines: [] }) }),
  });

  /** A choice is kept at once, what is typed when its field is left. */
  async function keep() {
    const now = JSON.stringify(typed);
    if (now === kept) return;
    kept = now;
    const answer = await app.tryChange({ act: "set", settings: typed });
    const errors = answer.ok ? [] : [answer.error, ...(answer.more ?? [])];
    drawn.show({ errors: errors.map((each) => ({ ...each, field: each.field?.replace("settings.", "") })) });
  }

  const update = button("Use the new version", () => app.offline.acceptUpdate(), { class: "button primary" });

  function draw() {
    const { offline, described } = app.state.get();
    ready.textContent = `${offlineSentence(offline)} Version ${described?.version ?? "…"}.`;
    update.hidden = !offline?.update;
  }

  draw();
  const node = element(
    "div",
    { class: "settings", onchange: keep, onfocusout: keep },
    element("h2", {}, "Settings of this project"),
    drawn.node,
    element("h2", {}, "This app"),
    ready,
    update,
  );
  node.refresh = draw;
  return node;
}
