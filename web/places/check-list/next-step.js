import { button, element } from "../../widgets/element.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";
import { placeOf } from "../forms/to-fill.js";
import { go, inLine } from "../go.js";
import { calendarButton } from "./calendar.js";

/** @import { StepAhead } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * What is to be done next of all the steps of the project, with its line; nothing where none has any left.
 * @param {App} app
 */
export function nextStep(app) {
  const { view } = app.state.get();
  const [first, ...others] = view?.steps ?? [];
  if (!first) return [];
  const label = `${first.state === "due" ? "Due" : "Next"}: ${first.line}`;
  return [
    element(
      "section",
      { class: "next-step", "aria-label": "Next step" },
      button(unbroken(label), () => toLine(app, first), { class: "button next-step-line" }),
      element("p", { class: "help" }, others.length ? `${first.name}, ${count(others.length)} after it.` : first.name),
      [first, ...others].some(({ due }) => due) ? calendarButton(app) : null,
    ),
  ];
}

/** @param {number} many */
const count = (many) => (many === 1 ? "1 step" : `${many} steps`);

/**
 * To a step in its line; from elsewhere in that line too.
 * @param {Pick<App, "state">} app
 * @param {Pick<StepAhead, "entry" | "step">} ahead
 */
export function toLine({ state }, { entry, step }) {
  const place = inLine(placeOf(state.get(), { id: entry, kind: "line" }), step);
  if (location.hash === `#${place}`) dispatchEvent(new HashChangeEvent("hashchange"));
  else go(place);
}
