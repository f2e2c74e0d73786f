import { element } from "../../widgets/element.js";
import { partSize } from "../../widgets/numbers/part-size.js";
import { drawing } from "../../widgets/pictures/drawing.js";
import { showTouched } from "../../widgets/pictures/part-touch.js";
import { inPlace } from "./in-place.js";

/** @import { Drawing, Reckoning } from "../../python/contract.d.ts" */
/** @import { Fields } from "../../widgets/pictures/picture.d.ts" */

/** How high it gets, so that the fields below it stay in sight. */
export const HIGH = 164;

/**
 * The drawing of the answer above the fields, which its dimensions open, as its parts open their rows in the list; before
 * there is one, what the question asks.
 * What was drawn last stays, pale, while something is half typed.
 * @param {string} asks
 * @param {Fields} fields
 * @param {(part: string) => void} openPart
 */
export function questionPicture(asks, fields, openPart) {
  const node = element("div", { class: "asked-picture" });
  let isDrawn = false;
  let touched = "";
  /** @type {Map<string, string>} */
  let labels = new Map();

  /** @param {string} key */
  function open(key) {
    touched = key;
    showTouched(node, key);
    openPart(key);
  }

  /** @param {Drawing | null} drawn */
  function draw(drawn) {
    isDrawn = drawn !== null;
    const parts = { labelOf: (/** @type {string} */ key) => labels.get(key) ?? "", open };
    const inside = drawn ? drawing(drawn, { high: HIGH, fields, parts }) : element("p", { class: "asks" }, asks);
    inPlace(node, () => node.replaceChildren(inside));
    showTouched(node, touched);
  }

  draw(null);
  return {
    node,
    open,
    /** @param {Pick<Reckoning, "drawing" | "parts">} answer */
    show({ drawing: drawn, parts }) {
      labels = new Map(parts.map((part) => [part.key, `${part.name}, ${part.count}×, ${partSize(part)}`]));
      node.classList.remove("waiting");
      if (drawn || isDrawn) draw(drawn);
    },
    wait: () => node.classList.toggle("waiting", isDrawn),
    clear: () => draw(null),
  };
}
