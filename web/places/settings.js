import { button, element } from "../widgets/element.js";
import { form } from "../widgets/form.js";
import { offlineSentence } from "../widgets/status.js";
import { formDraft, projectKey } from "./form-draft.js";
import { overKept } from "./over-kept.js";
import { tolerance } from "./tolerance.js";

/** How lengths are read and shown in the open project, and whether the app is ready without network. */
export function settings(app) {
  const ready = element("p", { class: "help" });
  const choices = element("div");
  let follow = () => {};

  function drawFields(fields) {
    const over = overKept(app, fields, (document) => document.settings);
    const drawn = form({
      fields,
      values: app.settings(),
      onInput: (values) => {
        typed = values;
        draft.type(values);
      },
      onFocus: (input, { kind }) => app.sheet.open(input, { kind, unit: app.unit(), peek: () => ({ lines: [] }) }),
    });

    const draft = formDraft(app, projectKey(app, "settings"), drawn);
    let typed = drawn.values();
    drawn.show({ errors: draft.withUnkept() });
    follow = () => {
      over.follow(drawn);
      typed = drawn.values();
      draft.keptAs(over.kept());
    };

    /** A choice is kept at once, what is typed when its field is left. */
    async function keep() {
      if (!over.isDue(typed)) return follow();
      const make = (mine, document) => ({ act: "set", settings: { ...document.settings, ...mine } });
      const answer = await app.tryChange(over.act(typed, make));
      if (answer.error?.kind === "taken back") {
        draft.drop();
        return drawFields(fields);
      }
      if (answer.ok) follow();
      const errors = answer.ok ? [] : [answer.error, ...(answer.more ?? [])];
      const own = errors.map((each) => ({ ...each, field: each.field?.replace("settings.", "") }));
      drawn.show({ errors: answer.ok ? [] : draft.withUnkept(own) });
    }

    choices.replaceChildren(
      element(
        "div",
        { onchange: keep, onfocusout: keep, oninput: ({ target }) => over.again(target.name) },
        drawn.node,
      ),
    );
  }

  const update = button("Use the new version", () => app.offline.acceptUpdate(), { class: "button primary" });

  function draw() {
    const { offline, described, stays } = app.state.get();
    ready.textContent = `${offlineSentence(offline)} ${staying(stays)} Version ${described?.version ?? "…"}.`;
    update.hidden = !offline?.update;
  }

  const allowed = tolerance(app);
  draw();
  drawFields(app.state.get().described?.settings ?? []);
  const node = element(
    "div",
    { class: "settings" },
    element("h2", {}, "Settings of this project"),
    choices,
    allowed,
    element("h2", {}, "This app"),
    ready,
    update,
  );
  const isLate = !app.state.get().described;
  node.refresh = (changed) => {
    draw();
    if (changed.includes("record")) {
      follow();
      allowed?.refresh();
    }
    if (isLate && changed.includes("described")) drawFields(app.state.get().described.settings);
  };
  return node;
}

/** Whether the browser has promised to keep what is here; nothing before it was asked. */
function staying(stays) {
  if (stays === true) return "The browser keeps what is here until you delete it.";
  if (stays === false) return "The browser may clear what is here when space runs out: back up now and then.";
  return "";
}
