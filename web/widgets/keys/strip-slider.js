import { element } from "../element.js";

/**
 * How many marks the arrow keys, and those that go further, lead on or back.
 * @type {Record<string, number>}
 */
const STEPS = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 4,
  PageDown: -4,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

/** Under the thumb a mark is as wide as a key. */
const THUMB = 56;

/**
 * What is touched, slid on, and stepped along with a keyboard. While it is touched, its face grows so that a thumb
 * finds each mark: the touched place stays where it is, all others move away from it.
 * @param {import("./strip-picture.js").StripPicture} picture
 * @param {Record<string, any> & {apart: number, onTouch(part: number): void, onStep(by: number): void}} options
 *   attributes; how many marks there are from one end to the other; and what hears of a touch, from 0 at the left to 1
 *   at the right, and of a step
 */
export function stripSlider(picture, { apart, onTouch, onStep, ...attributes }) {
  const face = element("div", { class: "strip-face" }, picture.node);
  /** @type {((x: number) => number) | null} the place under a thumb, while there is one */
  let under = null;

  /** @param {PointerEvent} event */
  function touched(event) {
    event.preventDefault();
    node.setPointerCapture(event.pointerId);
    const rest = node.getBoundingClientRect();
    const part = (event.clientX - rest.left) / rest.width;
    node.classList.add("strip-touched");
    const { left, width } = face.getBoundingClientRect();
    const whole = Math.max(rest.width, THUMB * apart);
    under = (x) => part + (x - event.clientX) / whole;
    picture.grow({ from: under(left), shown: width / whole });
    onTouch(part);
  }

  function left() {
    under = null;
    node.classList.remove("strip-touched");
    picture.grow(null);
  }

  /** @param {KeyboardEvent} event */
  function pressed(event) {
    const by = STEPS[event.key];
    if (!by) return;
    event.preventDefault();
    onStep(by);
  }

  const looks = { class: "strip", role: "slider", tabindex: "0", "aria-valuemin": 0, ...attributes };
  const node = element(
    "div",
    {
      ...looks,
      onpointerdown: touched,
      onpointermove: (/** @type {PointerEvent} */ event) => under && onTouch(under(event.clientX)),
      onlostpointercapture: left,
      onkeydown: pressed,
    },
    face,
  );
  return node;
}
