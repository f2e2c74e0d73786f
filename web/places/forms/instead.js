import { element } from "../../widgets/element.js";
import { inWords } from "../notices.js";

/** @import { App, Place } from "../place.d.ts" */

/** What a place shows in the place of what it is for. */

/** @param {string} sentence */
const help = (sentence) => element("p", { class: "help" }, sentence);

/**
 * A project has nothing to show: what would stand here, or why it can't be shown.
 * @param {App} app
 * @param {string} sentence
 */
export function nothingYet(app, sentence) {
  const { unshown } = app.state.get();
  if (!unshown) return help(sentence);
  return element("p", { class: "error" }, inWords(unshown));
}

/**
 * The address names what is not there any more.
 * @param {string} sentence
 * @returns {Place}
 */
export const notThere = (sentence) => ({ node: help(sentence) });

/**
 * What describes the questions is not here yet: the place is drawn once it is.
 * @param {string} sentence
 * @param {() => Place} draw
 * @returns {Place}
 */
export function arriving(sentence, draw) {
  const node = element("div", { class: "question" }, help(sentence));
  /** @type {Place | null} */
  let arrived = null;
  return {
    node,
    title: () => arrived?.title?.() ?? "",
    refresh(changed) {
      if (arrived) return arrived.refresh?.(changed);
      if (!changed.includes("described")) return;
      arrived = draw();
      node.replaceWith(arrived.node);
    },
    leave: () => arrived?.leave?.(),
  };
}
