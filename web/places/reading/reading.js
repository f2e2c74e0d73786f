import { naming } from "../../store/pad/naming.js";
import { latest } from "../../store/page/latest.js";
import { correctionKey, draftIn } from "../../store/project/draft.js";
import { button, element } from "../../widgets/element.js";
import { textField } from "../../widgets/fields/text-field.js";
import { mainAnswer } from "../../widgets/numbers/answers.js";
import { askInProject } from "../forms/ask-in-project.js";
import { fromProject } from "../forms/from-project.js";
import { notThere } from "../forms/instead.js";
import { standsFor } from "../forms/stands-for.js";
import { onward } from "../go.js";
import { copy } from "../notices.js";
import { readingDetails } from "./reading-details.js";

/** Correct a kept reading: the text as it was read, and what it now says. */
export function reading(app, id) {
  const { record } = app.state.get();
  const entry = record?.document.entries.find((each) => each.id === id);
  if (!entry) return notThere("This reading is no longer in the project.");
  const draft = draftIn(app.state, correctionKey(record, id));
  const correction = () => ({ act: "correct", id, text: field.value() });
  const read = latest(askInProject(app, correction));
  const result = element("output", { class: "result", tabindex: "-1" });
  const corrected = element("p", { class: "help" });
  const details = readingDetails(app, id);
  const isSum = app.state.get().view?.entries.some((each) => each.id === id && each.uses.length > 0);
  let was = entry;
  let said = null;
  const field = textField({
    field: { key: "text", label: isSum ? "The sum" : "The tape says", kind: "length", help: null },
    value: draft.get().text ?? entry.text,
    onInput: typed,
    onFocus: (input) =>
      app.sheet.open(input, {
        kind: "length",
        unit: entry.unit,
        peek,
        from: fromProject(app, { kind: "length" }, id),
        whenDone: () => result.focus(),
      }),
  });
  const standing = standsFor(app, ({ text }) => said?.ok && field.show({ echo: text }));

  const peek = () => ({
    lines: said?.ok ? [element("span", { class: "peek-answer" }, element("strong", {}, said.kept))] : [],
    keep: said?.ok ? { label: "Save", run: correct } : null,
  });

  function typed(text) {
    draft.keep({ text, changed: text !== was.text });
    ask();
  }

  /** The project goes along where a name may stand in the text, or a tape corrects what is read. */
  function goingWith(text) {
    const { record } = app.state.get();
    const { tape } = record.document.entries.find((each) => each.id === id) ?? {};
    return tape ? { document: record.document, id } : naming(record, text, id);
  }

  function ask() {
    const text = field.value();
    read({ do: "read", text, settings: app.project.settings(), unit: entry.unit, ...goingWith(text) }, (answer) => {
      said = answer;
      corrected.textContent = answer.corrected ?? "";
      field.show(answer.ok ? { echo: answer.echo } : { error: answer.error });
      result.classList.toggle("waiting", !answer.ok);
      if (answer.ok) standing({ text: answer.echo });
      if (answer.ok) result.replaceChildren(mainAnswer({ ...answer.value, label: "" }, answer.tape, acts()));
      app.sheet.refresh();
    });
  }

  const acts = () => [
    button("Save the correction", correct, { class: "button primary" }),
    button("Copy", () => copy(said.value.plain), { class: "button quiet" }),
  ];

  async function correct() {
    app.sheet.close();
    const goOn = onward();
    const answer = await app.project.change(correction(), { was });
    was = answer.now ?? was;
    if (!answer.ok) return;
    draft.drop();
    goOn(`project/${id}`);
  }

  ask();
  const node = element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, entry.name),
    field.node,
    corrected,
    result,
    details.node,
  );
  /** What another tab kept is shown, unless something is typed over it here. */
  function follow() {
    const now = app.state.get().record.document.entries.find((each) => each.id === id);
    const isTypedIn = draft.get().changed || document.activeElement === field.input;
    if (!now || isTypedIn || now.text === was.text || now.unit !== was.unit) return;
    was = now;
    field.set(now.text);
  }

  function refresh(changed) {
    if (!changed.includes("record")) return;
    follow();
    details.refresh();
    ask();
  }

  return { node, refresh };
}
