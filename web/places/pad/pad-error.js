import { button, element, present } from "../../widgets/element.js";

/** @import { Entering, Pad } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * Above the entry: what it corrects, or what could not be entered and holds up what was entered after it.
 * @param {App} app
 */
export function padError(app) {
  const node = element("div", { class: "pad-error" });
  /** @type {string | null} */
  let drawn = null;

  /** Drawn anew only when it says something else: a thumb may be on its button. */
  function draw() {
    const { pad, entering } = app.state.get();
    const said = sentence(pad, entering);
    if (said === drawn) return;
    drawn = said;
    node.hidden = said === "";
    node.classList.toggle("pad-correcting", Boolean(pad.fixing || pad.correcting));
    const isHeld = said !== "" && !pad.fixing && !pad.correcting;
    const fix = isHeld ? button("Fix it", () => app.entering.fix()) : null;
    node.replaceChildren(...present([element("p", {}, said), fix]));
  }

  draw();
  return { node, draw };
}

/**
 * @param {Pad} pad
 * @param {Entering[]} entering
 */
function sentence({ fixing, correcting }, [first]) {
  if (fixing) return "This line wasn’t entered. Enter adds it; ✕ drops it.";
  if (correcting) return `Editing line ${correcting}. Enter saves the change; ✕ cancels.`;
  return first?.error ? `“${first.text}” wasn’t entered. ${first.error.message}` : "";
}
