import { naming } from "../../store/pad/naming.js";
import { latest } from "../../store/page/latest.js";
import { correctionKey, draftIn } from "../../store/project/draft.js";
import { entryOf } from "../../store/project/identity.js";
import { button, element } from "../../widgets/element.js";
import { answerHeard } from "../../widgets/numbers/answer-heard.js";
import { askInProject } from "../forms/in-project.js";
import { notThere } from "../forms/instead.js";
import { saveChange } from "../forms/save-change.js";
import { firstBlank } from "../forms/to-fill.js";
import { onward } from "../go.js";
import { copy } from "../notices.js";
import { readingDetails } from "./reading-details.js";
import { numberOf, readingField } from "./reading-field.js";

/** @import { Answered, Read, Reading } from "../../python/contract.d.ts" */
/** @import { TextWidget } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

const UNREADABLE = "Fix the reading to save it.";

/**
 * Correct a kept reading: the text as it was read, and what it now says.
 * @param {App} app
 * @param {string} id
 */
export function reading(app, id) {
  const entryNow = () => entryOf(app.state.get().record, "reading", id);
  const entry = entryNow();
  if (!entry) return notThere("This reading isn’t in the project anymore.");
  const correcting = correction(app, entry, () => field.value());
  const result = element("output", { class: "result", tabindex: "-1", "aria-live": "off" });
  const saving = saveChange("Save change", correcting.keep);
  const heard = answerHeard();
  const corrected = element("p", { class: "help" });
  const details = readingDetails(app, id);
  const read = latest(askInProject(app, correcting.act));
  const field = readingField(app, {
    label: isSum(app, id) ? "Sum" : "Tape reading",
    value: correcting.typed() ?? entry.text,
    unit: () => entry.unit,
    own: id,
    result,
    keep: { label: "Save", run: correcting.keep, isOff: saving.isOff },
    onTyped(text) {
      correcting.type(text);
      ask();
    },
  });

  const { name, unit } = entry;

  function ask() {
    const text = field.value();
    const names = namesFor(app, entryNow(), text, id);
    read({ do: "read", text, settings: app.project.settings(), unit, ...names }, show);
  }

  /** @param {Answered<Read>} answer */
  function show(answer) {
    corrected.textContent = (answer.ok && answer.corrected) || "";
    result.classList.toggle("waiting", !answer.ok);
    saving.show(correcting.isChanged(), answer.ok ? "" : UNREADABLE);
    if (answer.ok) result.replaceChildren(numberOf(answer, [saving.key, copyOf(answer), saving.why]));
    heard.say(answer.ok ? answer.value : null);
    field.show(answer);
  }

  /** @param {string[]} changed */
  function refresh(changed) {
    if (!changed.includes("record")) return;
    correcting.follow(field, entryNow());
    details.refresh();
    ask();
  }

  ask();
  const back = element("a", { class: "back", href: "#project" }, "‹ Project");
  const nodes = [back, element("h2", {}, name), field.node, corrected, result, heard.node, details.node];
  const land = () => {
    if (firstBlank(app.state.get(), id)) field.focus();
  };
  return { node: element("div", { class: "question" }, nodes), title: () => name, refresh, land };
}

/**
 * @param {App} app
 * @param {string} id
 */
const isSum = (app, id) => app.state.get().view?.entries.some((each) => each.id === id && each.uses.length > 0);

/** @param {Read} read */
const copyOf = ({ value }) =>
  "plain" in value ? button("Copy", () => copy(value.plain), { class: "button quiet" }) : null;

/**
 * The project goes along where a name may stand in the text, or a tape corrects what is read.
 * @param {App} app
 * @param {Reading | undefined} entry
 * @param {string} text
 * @param {string} id
 */
function namesFor(app, entry, text, id) {
  const { record } = app.state.get();
  return record && entry?.tape ? { document: record.document, id } : naming(record, text, id);
}

/**
 * What is typed over a kept reading, until it is kept in its turn.
 * @param {App} app
 * @param {Reading} entry
 * @param {() => string} value
 */
function correction(app, entry, value) {
  const { id } = entry;
  const draft = draftIn(app.state, correctionKey(app.state.get().record, id));
  const act = () => ({ act: "correct", id, text: value() });
  let was = entry;

  async function keep() {
    app.sheet.close();
    const goOn = onward();
    const answer = await app.project.change(act(), { was });
    if (answer.now?.kind === "reading") was = answer.now;
    if (!answer.ok) return;
    draft.drop();
    goOn(`project/${id}`);
  }

  /**
   * What another tab kept is shown, unless something is typed over it here.
   * @param {Pick<TextWidget, "input" | "set">} field
   * @param {Reading | undefined} now
   */
  function follow(field, now) {
    const isTypedIn = draft.get().changed || document.activeElement === field.input;
    if (!now || isTypedIn || now.text === was.text || now.unit !== was.unit) return;
    was = now;
    field.set(now.text);
  }

  const isChanged = () => value() !== was.text;
  const type = (/** @type {string} */ text) => draft.keep({ text, changed: isChanged() });
  return { act, keep, follow, type, isChanged, typed: () => draft.get().text };
}
