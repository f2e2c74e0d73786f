import { naming } from "../../store/pad/naming.js";
import { latest } from "../../store/page/latest.js";
import { isUnkept } from "../../store/project/draft.js";
import { button, element } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { askInProject } from "../forms/ask-in-project.js";
import { sortedErrors } from "../forms/field-errors.js";
import { fromProject } from "../forms/from-project.js";
import { arriving, notThere } from "../forms/instead.js";
import { inUnit, offering, unitNote } from "../forms/question-fields.js";
import { standsFor } from "../forms/stands-for.js";
import { go } from "../go.js";
import { copy } from "../notices.js";
import { answered, inLittle, unanswered } from "./question-answer.js";
import { questionDraft } from "./question-draft.js";
import { keeping } from "./question-keep.js";

const ALL = "‹ All questions";
const ARRIVING = "The question appears as soon as the arithmetic has loaded.";

/**
 * One question, drawn from its declaration; with `entryId`, a kept line being corrected; with `of`, what was begun from
 * another entry.
 */
export function question(app, key, entryId, of) {
  const { described, record } = app.state.get();
  const declared = described?.reckoners.find((each) => each.key === key);
  if (!declared)
    return app.state.get().describedNow ? noQuestion() : arriving(ARRIVING, () => question(app, key, entryId, of));
  const entry = record?.document.entries.find((each) => each.id === entryId && each.reckoner === key);
  if (entryId && !entry) return notThere("This line isn't in the project.");
  const result = element("output", { class: "result", name: "result", tabindex: "-1" });
  const note = element("p", { class: "help", hidden: true });
  let said = null;
  let focused = null;

  const here = {
    settings: app.project.settings(),
    declared: described.settings,
    unit: entry?.unit ?? app.project.unit(),
  };
  const fields = form({
    fields: declared.fields.map((field) => offering(field, here)),
    values: entry?.values ?? {},
    onInput: typed,
    onFocus: (input, field) => {
      focused = field.key;
      app.sheet.open(input, {
        kind: field.kind,
        unit: draft.unit(),
        peek,
        from: fromProject(app, field, entry?.id),
        whenDone: showResult,
      });
    },
  });
  const draft = questionDraft(app, key, entry, fields, of);
  const keeper = keeping(app, { declared, entry, draft, values: fields.values, after: kept });
  const reckon = latest(askInProject(app, keeper.correction));

  function typed(values) {
    draft.typed(values);
    ask();
  }

  function ask() {
    const values = fields.values();
    result.classList.add("waiting");
    const names = naming(app.state.get().record, values, entry?.id);
    reckon(
      { do: "reckon", reckoner: key, values, settings: app.project.settings(), unit: draft.unit(), ...names },
      (answer) => {
        draft.answered(values, answer);
        show(answer);
      },
    );
  }

  const standing = standsFor(app, (echoes) => said?.ok && fields.show({ echoes }));
  const errors = () => sortedErrors(said, declared.fields, fields.values());

  function show(answer) {
    said = answer;
    result.classList.remove("waiting");
    fields.show({ echoes: answer.echoes, errors: errors().beside });
    if (answer.ok) standing(answer.echoes);
    result.replaceChildren(...(answer.ok ? answered(answer, acts()) : unanswered(errors(), declared.fields)));
    unitNote(note, draft.unit(), app);
    app.sheet.refresh();
  }

  function acts() {
    const { plain } = said.answers[0];
    return [
      button(keeper.label, keeper.keep, { class: "button primary" }),
      said.stick ? button("Print at true size", print) : null,
      isKept() ? button("How sure", () => go(`sure/${entry.id}`)) : null,
      plain ? button("Copy", () => copy(plain), { class: "button quiet" }) : null,
    ];
  }

  const peek = () => ({
    lines: inLittle(said, said && errors(), declared.fields, focused),
    keep: said?.ok ? { label: keeper.short, run: keeper.keep } : null,
  });

  /** What was begun from an entry is done with: the next is begun anew. */
  function kept() {
    if (of) draft.drop();
    showResult();
  }

  function showResult() {
    result.focus({ preventScroll: true });
    if (said?.ok) result.scrollIntoView({ block: "start" });
  }

  /** What is told is how sure the kept line is, not what is typed over it. */
  const isKept = () => entry && !isUnkept(app.state.get(), entry.id);
  const print = () => go(["paper", key, entry?.id].filter(Boolean).join("/"));

  function fill(values) {
    draft.drop();
    fields.set(values);
    typed(fields.values());
  }

  const isOfProject = entry || of;
  const last = draft.lastAnswer();
  if (last) show(last);
  ask();
  const node = element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: isOfProject ? "#project" : "#work-out" }, isOfProject ? "‹ Project" : ALL),
    element("h2", {}, entry ? `${declared.title}: ${entry.name}` : declared.title),
    element("p", { class: "asks" }, declared.asks),
    note,
    fields.node,
    element(
      "div",
      { class: "button-row" },
      button("Clear", () => fill({})),
      button("Show the example", () => fill(inUnit(declared, "example", draft.unit()))),
      entry ? button("As it was kept", () => fill(entry.values)) : null,
    ),
    result,
  );
  return { node };
}

const noQuestion = () => ({
  node: element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#work-out" }, ALL),
    element("p", { class: "help" }, "Sawside has no question under this address. Pick one from the list."),
  ),
});
