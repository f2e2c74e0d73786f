import { draftKey } from "../../store/page/state.js";
import { correctionKey, draftIn } from "../../store/project/draft.js";
import { entryOf } from "../../store/project/identity.js";
import { element } from "../../widgets/element.js";
import { fieldError } from "../../widgets/fields/field-error.js";
import { notThere } from "../forms/instead.js";
import { saveChange } from "../forms/save-change.js";
import { onward } from "../go.js";

/** @import { App } from "../place.d.ts" */

const NOTHING = "Write something to save it.";

/**
 * A note of the project: written, kept, changed. What is typed outlives the page.
 * @param {App} app
 * @param {string} id
 */
export function note(app, id) {
  const { record } = app.state.get();
  const entry = entryOf(record, "note", id);
  if (id && !entry) return notThere("This note isn’t in the project anymore.");
  const draft = draftIn(app.state, entry ? correctionKey(record, id) : draftKey("note"));
  const wrong = fieldError("note-error");
  let was = entry;
  const saving = saveChange("Save", keep);
  const isChanged = () => text.value !== (was?.text ?? "");
  const text = noteText(draft.get().text ?? entry?.text ?? "", () => {
    draft.keep({ text: text.value, changed: isChanged() });
    showSaving();
  });

  function showSaving() {
    saving.show(!entry || isChanged(), text.value.trim() ? "" : NOTHING);
  }

  async function keep() {
    const act = entry ? { act: "correct", id, text: text.value } : { act: "keep_note", text: text.value };
    const goOn = onward();
    const answer = await app.project.change(act, { was });
    if (answer.now?.kind === "note") was = answer.now;
    wrong.show(answer.ok ? null : answer.error);
    if (!answer.ok) return;
    draft.drop();
    goOn(`project/${answer.id}`);
  }

  /** What another tab kept is shown, unless something is typed over it here. */
  function follow() {
    const now = entryOf(app.state.get().record, "note", id);
    const isTypedIn = draft.get().changed || document.activeElement === text;
    if (!now || isTypedIn || now.text === was?.text) return;
    was = now;
    text.value = now.text;
    showSaving();
  }

  showSaving();
  const title = entry?.name ?? "New note";
  return {
    node: drawn(title, [text, wrong.node, saving.key, saving.why]),
    title: () => title,
    refresh: (/** @type {string[]} */ changed) => changed.includes("record") && follow(),
  };
}

/**
 * @param {string} value
 * @param {() => void} oninput
 */
const noteText = (value, oninput) =>
  element(
    "textarea",
    { id: "note-text", class: "note-text", rows: "8", "aria-describedby": "note-error", oninput },
    value,
  );

/**
 * @param {string} title
 * @param {Node[]} nodes
 */
const drawn = (title, nodes) =>
  element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", {}, title),
    element("label", { for: "note-text" }, "Note"),
    nodes,
  );
