import { isPinned, turnPin } from "../../store/page/pinned-and-recent.js";
import { element } from "../../widgets/element.js";
import { pinIcon } from "../../widgets/pictures/icons.js";

/** @import { Reckoner } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * What pins a question to the top of the list, and unpins it.
 * @param {App} app
 * @param {Pick<Reckoner, "key" | "title">} question
 */
export function pinButton({ state }, { key, title }) {
  const node = element(
    "button",
    {
      type: "button",
      class: "pin",
      "aria-label": `Pin ${title}`,
      "aria-pressed": String(isPinned(state, key)),
      onclick: () => node.setAttribute("aria-pressed", String(turnPin(state, key))),
    },
    pinIcon(),
    "Pin",
  );
  return node;
}
