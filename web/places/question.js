import { correctionKey, draftIn } from "../store/draft.js";
import { latest } from "../store/latest.js";
import { naming } from "../store/naming.js";
import { draftKey } from "../store/state.js";
import { button, element } from "../widgets/element.js";
import { form } from "../widgets/form.js";
import { nameDialog } from "../widgets/name-dialog.js";
import { askInProject } from "./ask-in-project.js";
import { fromProject } from "./from-project.js";
import { answered, inLittle, unanswered } from "./question-answer.js";
import { offering, unitNote } from "./question-fields.js";
import { standsFor } from "./stands-for.js";
import { sorted } from "./wants.js";

/** What was filled in, in one order: two forms that say the same are the same. */
const filled = (values) =>
  JSON.stringify(
    Object.entries(values)
      .filter(([, value]) => value !== "")
      .sort(),
  );

/** One question, drawn from its declaration; with `entryId`, a kept line being corrected. */
export function question(app, key, entryId) {
  const { described, record } = app.state.get();
  const declared = described?.reckoners.find((each) => each.key === key);
  if (!declared) return arriving(app, key, entryId);
  const entry = record?.document.entries.find((each) => each.id === entryId);
  const draft = draftIn(app.state, entry ? correctionKey(record, entry.id) : draftKey(key));
  const reckon = latest(askInProject(app, correction));
  const result = element("output", { class: "result", name: "result", tabindex: "-1" });
  const note = element("p", { class: "help", hidden: true });
  let was = entry;
  let said = null;
  let focused = null;

  const fields = form({
    fields: declared.fields.map((field) => offering(field, app.settings())),
    values: entry?.values ?? {},
    onInput: typed,
    onFocus: (input, field) => {
      focused = field.key;
      app.sheet.open(input, {
        kind: field.kind,
        unit: unit(),
        peek,
        from: fromProject(app, field, entry?.id),
        whenDone: showResult,
      });
    },
  });
  const kept = filled(fields.values());
  if (draft.get().values) fields.set(draft.get().values);

  /** What is typed, kept or not, goes on meaning what it meant in the unit in which it was begun. */
  function unit() {
    return entry?.unit ?? draft.get().unit ?? app.unit();
  }

  function typed(values) {
    draft.keep({ values, unit: unit(), changed: filled(values) !== kept });
    ask();
  }

  function ask() {
    const values = fields.values();
    result.classList.add("waiting");
    const names = naming(app.state.get().record, values, entry?.id);
    reckon({ do: "reckon", reckoner: key, values, settings: app.settings(), unit: unit(), ...names }, (answer) => {
      draft.keep({ asked: filled(values), said: answer });
      show(answer);
    });
  }

  const standing = standsFor(app, (echoes) => said?.ok && fields.show({ echoes }));
  const errors = () => sorted(said, declared.fields, fields.values());

  function show(answer) {
    said = answer;
    result.classList.remove("waiting");
    fields.show({ echoes: answer.echoes, errors: errors().beside });
    if (answer.ok) standing(answer.echoes);
    result.replaceChildren(...(answer.ok ? answered(answer, acts()) : unanswered(errors(), declared.fields)));
    unitNote(note, unit(), app);
    app.sheet.refresh();
  }

  function acts() {
    const { plain } = said.answers[0];
    const label = entry ? "Save the correction" : "Keep in project";
    return [
      button(label, keep, { class: "button primary" }),
      said.stick ? button("Print at true size", print) : null,
      plain ? button("Copy", () => app.copy(plain), { class: "button quiet" }) : null,
    ];
  }

  const peek = () => ({
    lines: inLittle(said, said && errors(), declared.fields, focused),
    keep: said?.ok ? { label: entry ? "Save" : "Keep", run: keep } : null,
  });

  function showResult() {
    result.focus({ preventScroll: true });
    if (said?.ok) result.scrollIntoView({ block: "start" });
  }

  function keep() {
    app.sheet.close();
    if (entry) return correct();
    nameDialog({
      title: `Keep ${declared.title.toLowerCase()}`,
      act: "Keep",
      name: declared.title,
      give: (name) => app.change({ act: "keep_line", name, reckoner: key, values: fields.values(), unit: unit() }),
      after: showResult,
    });
  }

  const print = () => app.go(["paper", key, entry?.id].filter(Boolean).join("/"));

  function correction() {
    return { act: "correct", id: entry.id, values: fields.values() };
  }

  async function correct() {
    const answer = await app.change(correction(), { was });
    was = answer.now ?? was;
    if (!answer.ok) return;
    draft.drop();
    app.go(`project/${entry.id}`);
  }

  function fill(values) {
    draft.drop();
    fields.set(values);
    typed(fields.values());
  }

  if (draft.get().said && draft.get().asked === filled(fields.values())) show(draft.get().said);
  ask();
  return element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: entry ? "#project" : "#work-out" }, entry ? "‹ Project" : "‹ All questions"),
    element("h2", {}, entry ? `${declared.title}: ${entry.name}` : declared.title),
    element("p", { class: "asks" }, declared.asks),
    note,
    fields.node,
    element(
      "div",
      { class: "button-row" },
      button("Clear", () => fill({})),
      button("Show the example", () => fill(declared.example)),
      entry ? button("As it was kept", () => fill(entry.values)) : null,
    ),
    result,
  );
}

function arriving(app, key, entryId) {
  const node = element(
    "div",
    { class: "question" },
    element("p", { class: "help" }, "The question appears as soon as the arithmetic has loaded."),
  );
  node.refresh = (changed) => changed.includes("described") && node.replaceWith(question(app, key, entryId));
  return node;
}
