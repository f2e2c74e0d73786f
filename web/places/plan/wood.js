import { button, element } from "../../widgets/element.js";
import { goFrom } from "../go.js";

/** @import { App } from "../place.d.ts" */

/** The questions whose lines say what a project is cut out of. */
const WOOD = ["wood_on_hand", "wood_to_buy"];

/**
 * The way to what there is to cut: the project's own line, or the question to begin it with.
 * @param {App} app
 */
export function wood(app) {
  const { described, record } = app.state.get();
  const questions = WOOD.flatMap((key) => described?.reckoners.find((each) => each.key === key) ?? []);
  if (questions.length === 0) return null;
  const open = (/** @type {string} */ key) => {
    const line = record?.document.entries.find((entry) => entry.kind === "line" && entry.reckoner === key);
    goFrom(["work-out", key, line?.id].filter(Boolean).join("/"), "plan");
  };
  return element(
    "div",
    { class: "button-row", role: "group", "aria-label": "Wood" },
    questions.map(({ key, title }) => button(title, () => open(key))),
  );
}
