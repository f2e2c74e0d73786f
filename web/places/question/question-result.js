import { isUnkept } from "../../store/project/draft.js";
import { button, element, present } from "../../widgets/element.js";
import { goToPart } from "../../widgets/numbers/parts-list.js";
import { goToStep, stepInHand } from "../../widgets/project/check-list.js";
import { stepsOfQuestion } from "../check-list/ticking.js";
import { sortedErrors } from "../forms/field-errors.js";
import { isToFill } from "../forms/to-fill.js";
import { go } from "../go.js";
import { copy } from "../notices.js";
import { cautionsToday } from "./cautions-today.js";
import { inLittle, wholeAnswer } from "./question-answer.js";
import { questionBar } from "./question-bar.js";

/** @import { Answered, Line, Reckoner, Reckoning } from "../../python/contract.d.ts" */
/** @import { Typed } from "../../widgets/widget.d.ts" */
/** @import { keeping } from "./question-keep.js" */
/** @import { App } from "../place.d.ts" */

/**
 * Where the answer of a question stands, and what can be done with it.
 * @param {App} app
 * @param {object} what
 * @param {Reckoner} what.declared the question
 * @param {Line} [what.entry] the kept line that is being corrected
 * @param {ReturnType<typeof keeping>} what.keeper
 * @param {() => Record<string, Typed>} what.values what is filled in
 * @param {(key: string) => void} what.openField
 * @param {() => (() => void) | null} what.clearing what clears the fields, where that is done from the answer
 */
export function questionResult(app, { declared, entry, keeper, values, openField, clearing }) {
  /** @type {Answered<Reckoning> | null} */
  let shown = null;
  const errors = () => sortedErrors(shown, declared.fields, values());
  const bar = questionBar({ toWhole: () => whole.scrollIntoView({ block: "start" }), toField: openField, keeper });
  let whole = element("div", { class: "answer-whole", hidden: true });
  const stepsOf = stepsOfQuestion(app, entry);
  const today = cautionsToday(app, () => shown && show(shown));
  // Only the bar is read aloud as it changes.
  const live = { role: "group", "aria-label": "Answer", "aria-live": "off" };
  const node = element("output", { class: "answered", name: "result", tabindex: "-1", ...live }, bar.node, whole);

  /** @param {Reckoning} answer */
  function acts({ answers, stick }) {
    const [main] = answers;
    // What is told is how sure the kept line is, not what is typed over it.
    const isKept = entry && !isUnkept(app.state.get(), entry.id);
    const clear = clearing();
    const print = () => go(["paper", declared.key, entry?.id].filter(Boolean).join("/"));
    return present([
      stick ? button("Print at true size", print) : null,
      isKept && answers.some(isNumber) ? button("How accurate?", () => go(`sure/${entry.id}`)) : null,
      "plain" in main ? button("Copy", () => copy(main.plain), { class: "button quiet" }) : null,
      clear ? button("Clear", clear, { class: "button quiet" }) : null,
    ]);
  }

  /** @param {Reckoning} answer */
  const fixes = ({ fixes: ways }) => ways.map(({ label, field }) => button(label, () => openField(field)));

  /** A line of the project that has no answer yet may be left half filled in. */
  function mayKeepBlanks() {
    const { beside, elsewhere } = errors();
    const isOfProject = entry && isUnkept(app.state.get(), entry.id) && isToFill(app.state.get(), entry.id);
    return Boolean(isOfProject && beside.length === 0 && elsewhere.length === 0);
  }

  /** @param {Answered<Reckoning>} answer */
  function show(answer) {
    shown = answer;
    node.classList.remove("waiting");
    today.show(answer.ok ? answer.cautions : []);
    if (answer.ok) bar.answered(answer);
    else bar.unanswered(errors(), declared.fields, mayKeepBlanks());
    const before = whole;
    whole = element("div", { class: "answer-whole", hidden: !answer.ok });
    if (answer.ok) whole.append(...drawn(answer));
    openAgain(before, whole);
    const takeInHand = stepInHand(before);
    before.replaceWith(whole);
    takeInHand(whole);
  }

  /** @param {Reckoning} answer */
  function drawn(answer) {
    const steps = answer.steps?.length ? stepsOf(answer.steps) : null;
    return wholeAnswer(answer, { fixes: fixes(answer), steps, acts: acts(answer), inFull: today.shown() });
  }

  return {
    nodes: [node, today.node],
    errors,
    show,
    wait: () => node.classList.add("waiting"),
    /** In a line or two above the keys, while the field `focused` is being typed in. */
    peek: (/** @type {string} */ focused) => ({
      lines: inLittle(shown, errors(), declared.fields, focused),
      keep: shown?.ok ? { label: keeper.short, run: keeper.keep } : null,
    }),
    /** The key of what is to be done first of its steps; "" where it has none. */
    nextStep: () => (shown?.ok && shown.steps?.find(({ state }) => state === "due" || state === "next")?.key) || "",
    /** Opens the row of a part in the list, or goes to that of a step. @param {string} key */
    openPart(key) {
      goToPart(whole, key);
      goToStep(whole, key);
    },
    goTo: () => node.focus({ preventScroll: true }),
  };
}

/**
 * What was unfolded stays so while the answer changes.
 * @param {HTMLElement} before
 * @param {HTMLElement} now
 */
function openAgain(before, now) {
  const [were, are] = [before, now].map((each) => [...each.querySelectorAll("details")]);
  if (were.length !== are.length) return;
  for (const [at, { open }] of were.entries()) are[at].open = open;
}

/** @param {{kind: string}} answer */
const isNumber = ({ kind }) => kind !== "text";
