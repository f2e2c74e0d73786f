import { button, element, firstIn, freshId, present } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { StepCaution, StepToDo } from "../../python/contract.d.ts" */

/**
 * @typedef {object} Ticking what can be done with the steps of a line that is kept
 * @property {(step: StepToDo) => void} turn ticks it, or unticks it
 * @property {(step: StepToDo) => void} details asks how it was done
 */

/**
 * What is to be done, step by step: what each is, when, what can hurt, what goes with it. Of a line of a project each
 * has a check; elsewhere it is said how they get one.
 * @param {StepToDo[]} steps
 * @param {{ticking: Ticking | null, hint: string}} how
 */
export const checkList = (steps, { ticking, hint }) =>
  element(
    "section",
    { class: "check-list", "aria-label": "Steps" },
    hint ? element("p", { class: "help" }, hint) : null,
    element(
      "ol",
      {},
      steps.map((step) => row(step, ticking)),
    ),
  );

/**
 * @param {StepToDo} step
 * @param {Ticking | null} ticking
 */
const row = (step, ticking) =>
  element("li", { class: `check check-${step.state}` }, ticking ? ticked(step, ticking) : plain(step));

/**
 * A row that opens to what must be known of its step.
 * @param {StepToDo} step
 */
function plain(step) {
  const { said, about, caution } = step;
  const when = whenOf(step);
  const head = present([
    element("span", { class: "check-said" }, unbroken(said)),
    when ? element("span", { class: "check-when" }, unbroken(when)) : null,
  ]);
  const told = present([line(caution?.full, "check-caution"), line(about)]);
  return told.length ? element("details", {}, element("summary", {}, head), told) : element("div", {}, head);
}

/**
 * @param {StepToDo} step
 * @param {Ticking} ticking
 */
function ticked(step, { turn, details }) {
  const { key, said, state } = step;
  const id = freshId("check");
  const box = element("input", {
    type: "checkbox",
    class: "check-box",
    id,
    "data-step": key,
    "aria-describedby": `${id}-when ${id}-about`,
    checked: state === "done",
    // It is ticked once that is kept.
    onclick: (/** @type {MouseEvent} */ event) => {
      event.preventDefault();
      turn(step);
    },
  });
  const toDetails = { class: "button quiet check-details", "aria-label": `Details: ${said}` };
  const when = whenOf(step);
  return [
    box,
    element(
      "div",
      { class: "check-head" },
      element("label", { for: id, class: "check-said" }, unbroken(said)),
      element("p", { class: "check-when", id: `${id}-when`, hidden: !when }, unbroken(when)),
    ),
    button("Details", () => details(step), toDetails),
    element("div", { class: "check-told", id: `${id}-about` }, toldOf(step)),
  ];
}

/**
 * What must be known of a step now. How one that only waits is done is with its details; a caution stands at the first
 * step that has it, which is told in full there.
 * @param {StepToDo} step
 */
function toldOf({ state, about, caution, done }) {
  const waits = state === "waits" || state === "passed";
  const isFirst = caution?.full !== caution?.short;
  return present([
    caution && !done && (isFirst || !waits) ? cautionOf(caution) : null,
    waits ? null : line(about),
    line(done?.photo && "With a photo."),
  ]);
}

/** @param {StepCaution} caution */
const cautionOf = ({ short, full }) =>
  full === short
    ? line(short, "check-caution")
    : element("details", { class: "check-caution" }, element("summary", {}, unbroken(short)), line(full));

/**
 * @param {string | undefined} text
 * @param {string} [look]
 */
const line = (text, look) => (text ? element("p", { class: look }, unbroken(text)) : null);

/**
 * When it was done, or is due.
 * @param {StepToDo} step
 */
export function whenOf({ done, due, state }) {
  if (done) return done.said;
  return due ? `${state === "due" ? "Due since" : "From"} ${due.said}` : "";
}

/**
 * Where a step stands in a list, with the focus on its check.
 * @param {HTMLElement} node
 * @param {string} key
 */
export function goToStep(node, key) {
  const box = firstIn(node, `[data-step="${CSS.escape(key)}"]`);
  box?.focus({ preventScroll: true });
  box?.closest("li")?.scrollIntoView({ block: "start" });
}

/**
 * The check that has the focus keeps it when the list is drawn anew.
 * @param {HTMLElement} before
 * @returns {(now: HTMLElement) => void} called with the new one once it is on the page
 */
export function stepInHand(before) {
  const held = document.activeElement;
  const key = held instanceof HTMLElement && before.contains(held) ? held.dataset.step : undefined;
  return (now) => {
    if (key) firstIn(now, `[data-step="${CSS.escape(key)}"]`)?.focus({ preventScroll: true });
  };
}
