import { latest } from "../store/latest.js";
import { mainAnswer } from "../widgets/answers.js";
import { button, element } from "../widgets/element.js";
import { textField } from "../widgets/text-field.js";

/** Correct a kept reading: the text as it was read, and what it now says. */
export function reading(app, id) {
  const entry = app.state.get().record?.document.entries.find((each) => each.id === id);
  if (!entry) return element("p", { class: "help" }, "This reading is no longer in the project.");
  const read = latest(app.ask);
  const result = element("output", { class: "result" });
  const save = button("Save the correction", correct, { class: "button primary wide" });
  let said = null;
  const field = textField({
    field: { key: "text", label: "The tape says", kind: "length", help: null },
    value: entry.text,
    onInput: ask,
    onFocus: (input) =>
      app.sheet.open(input, "length", () => [said?.ok ? element("strong", {}, said.value.text) : null]),
  });

  function ask() {
    read({ do: "read", text: field.value(), settings: app.settings(), unit: entry.unit }, (answer) => {
      said = answer;
      field.show(answer.ok ? { echo: answer.echo } : { error: answer.error });
      save.disabled = !answer.ok;
      if (answer.ok) result.replaceChildren(mainAnswer({ ...answer.value, label: "" }, answer.tape, app.copy));
      app.sheet.refresh();
    });
  }

  async function correct() {
    const answer = await app.change({ act: "correct", id, text: field.value() });
    if (answer.ok) app.go("project");
  }

  ask();
  return element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, entry.name),
    field.node,
    result,
    save,
  );
}
