import { correctionKey, draftIn } from "../../store/project/draft.js";
import { entryOf } from "../../store/project/identity.js";
import { element, present } from "../../widgets/element.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";
import { whenOf } from "../../widgets/project/check-list.js";
import { notThere } from "../forms/instead.js";
import { placeOf } from "../forms/to-fill.js";
import { inLine } from "../go.js";
import { doneDetails } from "./done-details.js";

/** @import { StepToDo } from "../../python/contract.d.ts" */
/** @import { App, Place } from "../place.d.ts" */

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
      element("a", { class: "back", href: `#${back(app, id, key)}` }, `‹ ${line()?.name ?? "Project"}`),
      element("h2", {}, unbroken(step?.said ?? key)),
      element("p", { class: "help" }, unbroken(step ? whenOf(step) : "")),
      ...howOf(step),
      ...doneDetails(app, { id, key, draft, kept: line()?.done?.[key], leadsTo: back(app, id, key) }),
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
 * How a step is done, and what can hurt at it.
 * @param {StepToDo | undefined} step
 */
const howOf = (step) =>
  present([
    step?.caution && !step.done ? element("p", { class: "check-caution" }, unbroken(step.caution.full)) : null,
    step?.about ? element("p", {}, unbroken(step.about)) : null,
  ]);

/**
 * To where the step stands in its line.
 * @param {App} app
 * @param {string} id
 * @param {string} key
 */
const back = (app, id, key) => inLine(placeOf(app.state.get(), { id, kind: "line" }), key);

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
