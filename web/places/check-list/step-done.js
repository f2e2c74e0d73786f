import { correctionKey, draftIn, same } from "../../store/project/draft.js";
import { entryOf } from "../../store/project/identity.js";
import { notDone } from "../../store/project/refusals.js";
import { button, element } from "../../widgets/element.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";
import { whenOf } from "../../widgets/project/check-list.js";
import { notThere } from "../forms/instead.js";
import { photoField } from "../forms/photo-field.js";
import { saveChange } from "../forms/save-change.js";
import { placeOf } from "../forms/to-fill.js";
import { onward } from "../go.js";
import { described, doneForm, doneIn } from "./done-form.js";

/** @import { Document, Done, StepToDo } from "../../python/contract.d.ts" */
/** @import { Draft } from "../../store/shapes.d.ts" */
/** @import { App, Place } from "../place.d.ts" */

const CHANGED = notDone(
  "meanwhile",
  "This step was changed in another tab.",
  "What you typed is still here. Save again to save it anyway, or leave it.",
);

/**
 * How a step of a kept line was done: when, in what air, a note, a photo. What is filled in outlives the page.
 * @param {App} app
 * @param {string} id of the line
 * @param {string} key of the step
 * @returns {Place}
 */
export function stepDone(app, id, key) {
  const { record } = app.state.get();
  if (!entryOf(record, "line", id)) return notThere("This line isn’t in the project anymore.");
  const draft = draftIn(app.state, correctionKey(record, `${id}/done/${key}`));
  const node = element("div", { class: "question" });
  const line = () => entryOf(app.state.get().record, "line", id);
  const told = () => stepOf(app, id, key);

  function draw() {
    const step = told();
    node.replaceChildren(
      element("a", { class: "back", href: `#${back(app, id)}` }, `‹ ${line()?.name ?? "Project"}`),
      element("h2", {}, unbroken(step?.said ?? key)),
      element("p", { class: "help" }, unbroken(step ? whenOf(step) : "")),
      ...filledIn(app, { id, key, draft, kept: line()?.done?.[key] }),
    );
  }

  draw();
  return {
    node,
    title: () => told()?.said ?? "",
    refresh(changed) {
      const isTypedIn = draft.get().changed || node.contains(document.activeElement);
      if (changed.includes("view") && !isTypedIn) draw();
    },
  };
}

/**
 * @param {App} app
 * @param {{id: string, key: string, draft: ReturnType<typeof draftIn>, kept?: Done}} step
 */
function filledIn(app, { id, key, draft, kept }) {
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
    goOn(back(app, id));
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
    goOn(back(app, id));
  }

  showSaving();
  const acts = [saving.key, isTicked ? button("Untick", untick) : null];
  return [form.node, photo.node, element("div", { class: "button-row" }, acts), saving.why];
}

/**
 * @param {App} app
 * @param {string} id
 */
const back = (app, id) => placeOf(app.state.get(), { id, kind: "line" });

/**
 * @param {App} app
 * @param {string} id
 * @param {string} key
 * @returns {StepToDo | undefined}
 */
const stepOf = (app, id, key) =>
  app.state
    .get()
    .view?.check_lists?.find(({ entry }) => entry === id)
    ?.steps.find((step) => step.key === key);
