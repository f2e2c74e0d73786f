import { correctionKey, draftIn } from "../store/draft.js";
import { latest } from "../store/latest.js";
import { mainAnswer } from "../widgets/answers.js";
import { button, element } from "../widgets/element.js";
import { textField } from "../widgets/text-field.js";

/** Correct a kept reading: the text as it was read, and what it now says. */
export function reading(app, id) {
  const { record } = app.state.get();
  const entry = record?.document.entries.find((each) => each.id === id);
  if (!entry) return element("p", { class: "help" }, "This reading is no longer in the project.");
  const draft = draftIn(app.state, correctionKey(record, id));
  const read = latest(app.ask);
  const result = element("output", { class: "result", tabindex: "-1" });
  let said = null;
  const field = textField({
    field: { key: "text", label: "The tape says", kind: "length", help: null },
    value: draft.get().text ?? entry.text,
    onInput: typed,
    onFocus: (input) =>
      app.sheet.open(input, { kind: "length", unit: entry.unit, peek, whenDone: () => result.focus() }),
  });

  const peek = () => ({
    lines: said?.ok ? [element("span", { class: "peek-answer" }, element("strong", {}, said.value.text))] : [],
    keep: said?.ok ? { label: "Save", run: correct } : null,
  });

  function typed(text) {
    draft.keep({ text, changed: text !== entry.text });
    ask();
  }

  function ask() {
    read({ do: "read", text: field.value(), settings: app.settings(), unit: entry.unit }, (answer) => {
      said = answer;
      field.show(answer.ok ? { echo: answer.echo } : { error: answer.error });
      result.classList.toggle("waiting", !answer.ok);
      if (answer.ok) result.replaceChildren(mainAnswer({ ...answer.value, label: "" }, answer.tape, acts()));
      app.sheet.refresh();
    });
  }

  const acts = () => [
    button("Save the correction", correct, { class: "button primary" }),
    button("Copy", () => app.copy(said.value.plain), { class: "button quiet" }),
  ];

  async function correct() {
    app.sheet.close();
    const answer = await app.change({ act: "correct", id, text: field.value() });
    if (!answer.ok) return;
    draft.drop();
    app.go(`project/${id}`);
  }

  ask();
  return element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, entry.name),
    field.node,
    result,
  );
}
