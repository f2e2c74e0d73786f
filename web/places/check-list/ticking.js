import { isUnkept } from "../../store/project/draft.js";
import { element } from "../../widgets/element.js";
import { checkList } from "../../widgets/project/check-list.js";
import { go } from "../go.js";
import { calendarButton } from "./calendar.js";
import { doneIn } from "./done-form.js";

/** @import { Line, StepToDo } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

const TO_PROJECT = "Save to project to tick these.";
const CHANGED = "Save your change to tick these.";
const ALREADY = ["That step is ticked already.", "That step isn’t ticked anymore."];

/**
 * The steps of a question as it is answered; those of a kept line are ticked, one after another.
 * @param {App} app
 * @param {Line} [entry] the kept line
 * @returns {(steps: StepToDo[]) => HTMLElement}
 */
export function stepsOfQuestion(app, entry) {
  if (!entry) return (steps) => checkList(steps, { ticking: null, hint: TO_PROJECT });
  const { id } = entry;
  let isOnItsWay = false;

  /** A second touch of the same finger is none. @param {StepToDo} step */
  async function turn({ key, state }) {
    if (isOnItsWay) return;
    isOnItsWay = true;
    const wasDone = state === "done";
    await app.project.change((document) => {
      // What is shown may be of before: a tick in the place of another would drop its note.
      if (Boolean(doneIn(document, id, key)) !== wasDone) return { ok: true, said: ALREADY[Number(wasDone)] };
      return { act: wasDone ? "untick" : "tick", id, step: key };
    });
    isOnItsWay = false;
  }

  const details = (/** @type {StepToDo} */ { key }) => go(`step/${id}/${key}`);
  return (steps) => {
    if (isUnkept(app.state.get(), id)) return checkList(steps, { ticking: null, hint: CHANGED });
    const hasTimes = steps.some(({ due, state }) => due && state !== "done");
    return element(
      "div",
      { class: "check-list-kept" },
      checkList(steps, { ticking: { turn, details }, hint: "" }),
      hasTimes ? calendarButton(app, id) : null,
    );
  };
}
