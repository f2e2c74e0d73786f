import { button, element, present } from "../../widgets/element.js";
import { briefly } from "../../widgets/numbers/fraction.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";
import { inWords } from "../notices.js";
import { headline } from "./headline.js";
import { unanswered } from "./question-answer.js";

/** @import { Reckoning } from "../../python/contract.d.ts" */
/** @import { Named, Sorted } from "../forms/field-errors.js" */

/** Longer words are written smaller, to stand whole in the bar. */
const LONG = 24;

/**
 * The bar that keeps the answer in sight, whatever is scrolled: its number with the verdict, or what is needed still. A
 * press on it goes to the whole, or to the field that is needed. It alone is read aloud as it changes.
 * @param {object} acts
 * @param {() => void} acts.toWhole
 * @param {(key: string) => void} acts.toField
 * @param {{label: string, short: string, keep(): void}} acts.keeper
 */
export function questionBar({ toWhole, toField, keeper }) {
  const said = element("div", { class: "bar-said", role: "status" });
  const whole = button("▾", toWhole, { class: "button quiet bar-whole", "aria-label": "Show the whole answer" });
  const keep = button(keeper.short, keeper.keep, { class: "button primary", "aria-label": keeper.label });
  // A press anywhere on it is as good as one on its button.
  const node = element("div", { class: "answer-bar" }, said, whole, keep);
  new ResizeObserver(makeRoom).observe(node);
  const toAnswer = (/** @type {boolean} */ isThere) => {
    whole.hidden = !isThere;
    keep.hidden = !isThere;
  };

  return {
    node,
    /** @param {Reckoning} answer */
    answered(answer) {
      said.replaceChildren(inBar(answer));
      said.onclick = toWhole;
      toAnswer(true);
    },
    /**
     * @param {Sorted} errors
     * @param {Named[]} fields
     * @param {boolean} mayKeep whether what was typed until now can be kept as it is
     */
    unanswered(errors, fields, mayKeep) {
      const key = [...errors.beside, ...errors.wanted].find(({ field }) =>
        fields.some((each) => each.key === field),
      )?.field;
      said.replaceChildren(...(errors.beside.length ? [check(errors, fields)] : unanswered(errors, fields)));
      said.onclick = () => key && toField(key);
      toAnswer(false);
      keep.hidden = !mayKeep;
    },
  };
}

/**
 * What scrolls behind the bar has to end above it, however many lines it has.
 * @param {ResizeObserverEntry[]} entries
 */
function makeRoom([{ target }]) {
  const { height } = target.getBoundingClientRect();
  target.closest("main")?.style.setProperty("--bar-now", `${Math.ceil(height)}px`);
}

/**
 * Which fields hold what can't be right: why stands beside each.
 * @param {Sorted} errors
 * @param {Named[]} fields
 */
function check({ beside }, fields) {
  const wrong = fields.filter(({ key }) => beside.some(({ field }) => field === key));
  const text = wrong.length === 1 ? inWords(beside[0]) : `Check: ${wrong.map(({ label }) => label).join(", ")}`;
  return element("p", { class: "help" }, unbroken(text));
}

/** @param {Reckoning} answer */
function inBar(answer) {
  const [main] = answer.answers;
  const { lead, text } = headline(answer);
  const isWords = lead === "" || main.kind === "text" || main.kind === "lengths";
  return element(
    "div",
    { class: "main-answer" },
    present([
      lead ? element("p", { class: "bar-lead" }, unbroken(lead)) : null,
      isWords
        ? element("p", { class: `bar-text ${text.length > LONG ? "bar-long" : ""}` }, unbroken(text))
        : briefly(main, "fraction-bar"),
    ]),
  );
}
