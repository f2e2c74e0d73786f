import { same } from "../../store/project/draft.js";
import { notDone } from "../../store/project/refusals.js";
import { button, element } from "../../widgets/element.js";
import { photoField } from "../forms/photo-field.js";
import { saveChange } from "../forms/save-change.js";
import { onward } from "../go.js";
import { described, doneForm, doneIn } from "./done-form.js";

/** @import { Document, Done } from "../../python/contract.d.ts" */
/** @import { draftIn } from "../../store/project/draft.js" */
/** @import { Draft } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */

const CHANGED = notDone(
  "meanwhile",
  "This step was changed in another tab.",
  "What you typed is still here. Save again to save it anyway, or leave it.",
);

/**
 * What is filled in of how a step was done, and what ticks it by that.
 * @param {App} app
 * @param {object} step
 * @param {string} step.id of the line
 * @param {string} step.key
 * @param {ReturnType<typeof draftIn>} step.draft where it waits
 * @param {Done} [step.kept] what is kept of the step
 * @param {string} step.leadsTo the place that it leads to
 */
export function doneDetails(app, { id, key, draft, kept, leadsTo }) {
  let before = described(kept);
  const isTicked = kept !== undefined;
  const now = () => ({ ...described(kept), ...draft.get().values, photo: draft.get().photo ?? before.photo });
  const form = doneForm({ isTicked, values: now(), onInput: (values) => keep({ values: { ...values } }) });
  const saving = saveChange(isTicked ? "Save change" : "Tick this step", save);
  const photo = photoField(app, {
    now: () => ({ photo: now().photo, picture: draft.get().picture }),
    alt: () => "Photo of this step",
    put(named, pictures = {}) {
      keep({ photo: named, picture: pictures[named] });
      return photo.refresh();
    },
  });

  /** @param {Draft} typed */
  function keep(typed) {
    draft.keep(typed);
    draft.keep({ changed: !same(now(), before) });
    showSaving();
  }

  const showSaving = () => saving.show(!isTicked || !same(now(), before));

  async function save() {
    const { done_at: typed, ...more } = now();
    const { picture } = draft.get();
    // A moment that was kept and is cleared is asked for again; of a step that is only now ticked, none is this one.
    const moment = typed || isTicked ? { done_at: typed } : {};
    const pictures = picture ? { [more.photo]: picture } : {};
    const goOn = onward();
    const act = { act: "tick", id, step: key, ...moment, ...more };
    const answer = await app.project.change((document) => meanwhile(document) ?? act, { pictures });
    form.show({ errors: answer.ok ? [] : [answer.error] });
    if (!answer.ok) return;
    draft.drop();
    goOn(leadsTo);
  }

  /**
   * Why it is not kept, where another tab was first; then what is there by now is what is replaced.
   * @param {Document} document
   */
  function meanwhile(document) {
    const there = described(doneIn(document, id, key));
    if (same(there, before)) return null;
    before = there;
    return CHANGED;
  }

  async function untick() {
    const goOn = onward();
    const answer = await app.project.change({ act: "untick", id, step: key });
    if (!answer.ok) return;
    draft.drop();
    goOn(leadsTo);
  }

  showSaving();
  const acts = [saving.key, isTicked ? button("Untick", untick) : null];
  return [form.node, photo.node, element("div", { class: "button-row" }, acts), saving.why];
}
