import { element } from "../element.js";

/** @import { Shown } from "../widget.d.ts" */

/**
 * The main answer for a screen reader, and nothing else of it: said when it is another one. What shows the whole answer
 * is not live.
 */
export function answerHeard() {
  const node = element("p", { class: "heard", role: "status" });
  return {
    node,
    /** @param {Shown | null | undefined} value nothing while there is none */
    say(value) {
      const words = value ? [value.label, value.words ?? value.text].filter(Boolean).join(": ") : "";
      if (node.textContent !== words) node.textContent = words;
    },
  };
}
