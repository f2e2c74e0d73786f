import { svgElement } from "../element.js";

/** @import { Shape } from "../../python/contract.d.ts" */
/** @import { Fields, Placed } from "./picture.d.ts" */

/** Half of what a finger needs, across and up. */
const FINGER = 22;

/**
 * What makes the dimensions of a drawing touchable: a button over the text of each that a field asks for. It is as large
 * as a finger where the next one leaves it room.
 * @param {Shape[]} shapes
 * @param {Map<number, Placed>} placed the texts by their shapes
 * @param {Fields} fields
 */
export function touchable(shapes, placed, { labelOf, open }) {
  const touched = shapes.flatMap((shape, at) => {
    const text = placed.get(at);
    const field = "field" in shape ? shape.field : undefined;
    const label = field && labelOf(field);
    return text && field && label ? [{ field, label, text }] : [];
  });
  return touched.map(({ field, label, text }) => {
    const others = touched.filter((each) => each.text !== text).map((each) => each.text);
    return touch(text, roomOf(text, others), `Change ${label}`, () => open(field));
  });
}

/**
 * @param {Placed} text
 * @param {Placed[]} others
 */
function roomOf(text, others) {
  const across = Math.max(FINGER, text.half[0]);
  const near = others.filter((other) => Math.abs(other.x - text.x) < across + Math.max(FINGER, other.half[0]));
  const free = near.map((other) => Math.abs(other.y - text.y) / 2).filter((half) => half > text.half[1]);
  return { x: text.x, y: text.y, across, up: Math.max(text.half[1], Math.min(FINGER, ...free)) };
}

/**
 * @param {Placed} text
 * @param {{x: number, y: number, across: number, up: number}} room
 * @param {string} name
 * @param {() => void} act
 */
function touch({ half: [reach, down] }, { x, y, across, up }, name, act) {
  const pressed = (/** @type {KeyboardEvent} */ event) => {
    if (event.key !== "Enter" && event.key !== " ") return;
    event.preventDefault();
    act();
  };
  return svgElement(
    "g",
    { class: "dimension-touch", role: "button", tabindex: "0", "aria-label": name, onclick: act, onkeydown: pressed },
    svgElement("rect", { x: x - across, y: y - up, width: 2 * across, height: 2 * up, rx: 4 }),
    svgElement("line", { x1: x - reach, x2: x + reach, y1: y + down, y2: y + down }),
  );
}
