import { naming } from "../../store/pad/naming.js";
import { answeredNow } from "../../store/page/at-hand.js";
import { latest } from "../../store/page/latest.js";
import { button, element } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { fromProject } from "../forms/from-project.js";
import { allEchoed, askInProject } from "../forms/in-project.js";
import { offering } from "../forms/question-fields.js";
import { inUnit, unitNote } from "../forms/units.js";
import { questionDraft } from "./question-draft.js";
import { keeping } from "./question-keep.js";
import { questionResult } from "./question-result.js";

/** @import { Answered, Line, Message, Reckoner, Reckoning } from "../../python/contract.d.ts" */
/** @import { Peek, Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @typedef {{unit: string, peek(focused: string): Peek, whenDone(): void}} Opening what the keypad gets */

/**
 * The fields of a question, and its answer, which follows what is typed.
 * @param {App} app
 * @param {object} what
 * @param {Reckoner} what.declared the question
 * @param {Line} [what.entry] the kept line that is being corrected
 * @param {string} [what.of] the entry that this one was begun from
 */
export function questionAsked(app, { declared, entry, of }) {
  const note = element("p", { class: "help", hidden: true });
  const opening = () => ({ unit: draft.unit(), peek: result.peek, whenDone: result.goTo });
  const fields = fieldsOf(app, { declared, entry, onInput: typed, opening });
  const draft = questionDraft(app, declared.key, entry, fields, of);
  const keeper = keeping(app, { declared, entry, draft, values: fields.values, after: kept });
  const result = questionResult(app, { declared, entry, keeper, values: fields.values });
  const reckon = latest(askInProject(app, keeper.correction));

  /** @param {Record<string, Typed>} values */
  function typed(values) {
    draft.typed(values);
    ask();
  }

  function ask() {
    const values = fields.values();
    result.wait();
    reckon(messageOf(app, { declared, entry, values, unit: draft.unit() }), (answer) => {
      draft.answered(values, answer);
      if (answer.ok) answeredNow(app.state, declared.key);
      show(answer);
    });
  }

  /** @param {Answered<Reckoning>} answer */
  function show(answer) {
    result.show(answer);
    const { beside: errors, wanted: needed } = result.errors();
    fields.show({ echoes: answer.ok ? allEchoed(answer) : {}, errors, needed });
    unitNote(note, draft.unit(), app);
    app.sheet.refresh();
  }

  /** What was begun from an entry is done with: the next is begun anew. */
  function kept() {
    if (of) draft.drop();
    result.goTo();
  }

  /** @param {Record<string, Typed>} values */
  function fill(values) {
    draft.drop();
    fields.set(values);
    typed(fields.values());
  }

  const last = draft.lastAnswer();
  if (last) show(last);
  ask();
  const example = () => inUnit(declared, "example", draft.unit());
  return { nodes: [note, fields.node, filling(fill, example, entry), result.node] };
}

/**
 * @param {App} app
 * @param {{declared: Reckoner, entry?: Line, values: Record<string, Typed>, unit: string}} asked
 * @returns {Message<"reckon">}
 */
function messageOf(app, { declared, entry, values, unit }) {
  const names = naming(app.state.get().record, values, entry?.id);
  return { do: "reckon", reckoner: declared.key, values, settings: app.project.settings(), unit, ...names };
}

/**
 * The fields; `opening()` is what the keypad gets for the one that is touched, besides what the field itself says.
 * @param {App} app
 * @param {{declared: Reckoner, entry?: Line, onInput(values: Record<string, Typed>): void, opening(): Opening}} how
 */
function fieldsOf(app, { declared, entry, onInput, opening }) {
  const here = {
    settings: app.project.settings(),
    declared: app.state.get().described?.settings ?? [],
    unit: entry?.unit ?? app.project.unit(),
  };
  return form({
    fields: declared.fields.map((field) => offering(field, here)),
    values: entry?.values ?? {},
    onInput,
    onFocus(input, field) {
      const { peek, ...others } = opening();
      const from = fromProject(app, field, entry?.id);
      app.sheet.open(input, { kind: field.kind, from, peek: () => peek(field.key), ...others });
    },
  });
}

/**
 * What fills in all the fields at once.
 * @param {(values: Record<string, Typed>) => void} fill
 * @param {() => Record<string, Typed>} example
 * @param {Line} [entry]
 */
const filling = (fill, example, entry) =>
  element(
    "div",
    { class: "button-row" },
    button("Clear", () => fill({})),
    button("Try an example", () => fill(example())),
    entry ? button("Undo my edits", () => fill(entry.values)) : null,
  );
