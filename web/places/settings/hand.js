import { element } from "../../widgets/element.js";
import { choiceField } from "../../widgets/fields/choice-field.js";

/** @import { App } from "../place.d.ts" */

const HAND = {
  key: "hand",
  label: "Working hand",
  help: "Enter and the math signs go to this side. Turn the phone sideways and all the keys do.",
  choices: [
    { value: "right", label: "Right" },
    { value: "left", label: "Left" },
  ],
};

/**
 * Which hand the keys of this device are laid out for; no project and no backup has it.
 * @param {App} app
 */
export function handChoice(app) {
  const { hand } = app.state.get();
  const set = (/** @type {string} */ side) => app.state.set({ hand: { ...app.state.get().hand, side } });
  const choice = choiceField({ field: HAND, value: hand.side, onInput: set });
  return [element("h2", {}, "This device"), choice.node];
}
