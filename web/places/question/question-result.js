import { isUnkept } from "../../store/project/draft.js";
import { button, element } from "../../widgets/element.js";
import { sortedErrors } from "../forms/field-errors.js";
import { go } from "../go.js";
import { copy } from "../notices.js";
import { answered, inLittle, unanswered } from "./question-answer.js";

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
 */
export function questionResult(app, { declared, entry, keeper, values }) {
  const node = element("output", { class: "result", name: "result", tabindex: "-1" });
  /** @type {Answered<Reckoning> | null} */
  let shown = null;
  const errors = () => sortedErrors(shown, declared.fields, values());

  /** @param {Reckoning} answer */
  function acts({ answers: [main], stick }) {
    // What is told is how sure the kept line is, not what is typed over it.
    const isKept = entry && !isUnkept(app.state.get(), entry.id);
    const print = () => go(["paper", declared.key, entry?.id].filter(Boolean).join("/"));
    return [
      button(keeper.label, keeper.keep, { class: "button primary" }),
      stick ? button("Print at true size", print) : null,
      isKept ? button("How accurate?", () => go(`sure/${entry.id}`)) : null,
      "plain" in main ? button("Copy", () => copy(main.plain), { class: "button quiet" }) : null,
    ];
  }

  return {
    node,
    errors,
    wait: () => node.classList.add("waiting"),
    show(/** @type {Answered<Reckoning>} */ answer) {
      shown = answer;
      node.classList.remove("waiting");
      const nodes = answer.ok ? answered(answer, acts(answer)) : unanswered(errors(), declared.fields);
      node.replaceChildren(...nodes);
    },
    /** In a line or two above the keys, while the field `focused` is being typed in. */
    peek: (/** @type {string} */ focused) => ({
      lines: inLittle(shown, errors(), declared.fields, focused),
      keep: shown?.ok ? { label: keeper.short, run: keeper.keep } : null,
    }),
    goTo() {
      node.focus({ preventScroll: true });
      if (shown?.ok) node.scrollIntoView({ block: "start" });
    },
  };
}
