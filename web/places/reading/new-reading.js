import { naming } from "../../store/pad/naming.js";
import { latest } from "../../store/page/latest.js";
import { draftKey } from "../../store/page/state.js";
import { draftIn } from "../../store/project/draft.js";
import { button, element } from "../../widgets/element.js";
import { textField } from "../../widgets/fields/text-field.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { mainAnswer } from "../../widgets/numbers/answers.js";
import { fromProject } from "../forms/from-project.js";
import { standsFor } from "../forms/stands-for.js";
import { go } from "../go.js";

/** A reading typed straight into the project, or a sum of what is there already, which follows it. */
export function newReading(app) {
  const draft = draftIn(app.state, draftKey("reading"));
  const read = latest(app.ask);
  const result = element("output", { class: "result", name: "result", tabindex: "-1" });
  const unit = () => draft.get().unit ?? app.project.unit();
  let said = null;
  const field = textField({
    field: { key: "text", label: "The tape says", kind: "length", help: "Or a sum of readings and answers." },
    value: draft.get().text ?? "",
    onInput: (text) => {
      draft.keep({ text, unit: unit() });
      ask();
    },
    onFocus: (input) =>
      app.sheet.open(input, {
        kind: "length",
        unit: unit(),
        peek,
        from: fromProject(app, { kind: "length" }),
        whenDone: () => result.focus(),
      }),
  });
  const standing = standsFor(app, ({ text }) => said?.ok && field.show({ echo: text }));

  const peek = () => ({
    lines: said?.ok ? [element("span", { class: "peek-answer" }, element("strong", {}, said.kept))] : [],
    keep: said?.ok ? { label: "Keep", run: keep } : null,
  });

  function ask() {
    const text = field.value();
    if (text.trim() === "") return show(null);
    const names = naming(app.state.get().record, text);
    read({ do: "read", text, settings: app.project.settings(), unit: unit(), ...names }, show);
  }

  function show(answer) {
    said = answer;
    field.show(said?.ok ? { echo: said.echo } : { error: said?.error });
    if (said?.ok) standing({ text: said.echo });
    const keepIt = button("Keep in project", keep, { class: "button primary" });
    result.replaceChildren(...(said?.ok ? [mainAnswer({ ...said.value, label: "" }, said.tape, [keepIt])] : []));
    app.sheet.refresh();
  }

  function keep() {
    app.sheet.close();
    const text = field.value();
    nameDialog({
      title: `Keep ${said.kept}`,
      act: "Keep",
      give: (name) => app.project.change({ act: "keep_reading", name, text, unit: unit() }),
      after: () => {
        draft.drop();
        go("project");
      },
    });
  }

  ask();
  const node = element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, "New reading"),
    field.node,
    result,
  );
  return { node };
}
