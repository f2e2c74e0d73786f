import { element, svgElement } from "../element.js";

/** @import { Strip, StripMark } from "../../python/contract.d.ts" */
/** @import { Keys } from "../widget.d.ts" */

const WIDTH = 344;
const HEIGHT = 60;
const WORDS_FROM_EDGE = 28;
const WORDS_APART = 46;
/** @type {Record<string, number>} by the key */
const STEPS = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 };

/**
 * An inch drawn large: touch the mark that you see on your tape, slide to adjust. The core sends
 * the marks; `onPick(mark)` hears of each one under the finger, `step(by)` and the arrow keys go
 * one mark on or back from the one that stands in the field.
 * @param {Strip} strip
 * @param {{standing(): string, onPick(mark: StripMark): void}} field `standing` is the text of that mark, "" for none
 * @returns {Keys & {step(by: number): void}}
 */
export function inchStrip({ marks, words }, { standing, onPick }) {
  const { picture, show } = pictureOf(marks);

  /** Which mark stands in the field; the first one, which writes nothing, where none does. */
  function at() {
    const text = standing();
    const found = marks.findIndex((mark) => mark.text && mark.text === text);
    return Math.max(0, found);
  }

  /** @param {number} now */
  function draw(now) {
    show(marks[now]);
    node.setAttribute("aria-valuenow", String(now));
    node.setAttribute("aria-valuetext", marks[now].words);
  }

  /** @param {number} next */
  function pick(next) {
    if (next !== at()) onPick(marks[next]);
    draw(next);
  }

  const step = (/** @type {number} */ by) => pick(Math.min(marks.length - 1, Math.max(0, at() + by)));

  const node = slider(picture, {
    "aria-label": words,
    "aria-valuemax": marks.length - 1,
    onfocus: () => draw(at()),
    onTouch: (part) => pick(nearestTo(part, marks)),
    onStep: step,
  });
  draw(at());
  return { node, step, refresh: () => draw(at()) };
}

/**
 * What is touched, slid on, and stepped along with the arrow keys.
 * @param {Node} picture
 * @param {Record<string, any> & {onTouch(part: number): void, onStep(by: number): void}} options attributes, and what
 *   hears of a touch, from 0 at the left to 1 at the right, and of a step
 */
function slider(picture, { onTouch, onStep, ...attributes }) {
  /** @param {PointerEvent} event */
  function touched(event) {
    event.preventDefault();
    node.setPointerCapture(event.pointerId);
    const box = node.getBoundingClientRect();
    onTouch((event.clientX - box.left) / box.width);
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
      onpointermove: (/** @type {PointerEvent} */ event) => event.buttons && touched(event),
      onkeydown: pressed,
    },
    picture,
  );
  return node;
}

/**
 * Which mark is nearest to a place on the strip.
 * @param {number} part from 0 at the left to 1 at the right
 * @param {StripMark[]} marks
 */
function nearestTo(part, marks) {
  const away = marks.map((mark) => Math.abs(mark.at - part));
  return away.indexOf(Math.min(...away));
}

/**
 * The marks drawn, and the way to show which one is touched.
 * @param {StripMark[]} marks
 */
function pictureOf(marks) {
  const x = (/** @type {StripMark} */ mark) => mark.at * WIDTH;
  const low = { y: HEIGHT - 6, "text-anchor": "middle" };
  const cursor = svgElement("line", { class: "strip-cursor", y1: 0, y2: HEIGHT, hidden: true });
  const spelled = svgElement("text", { class: "strip-spelled", ...low, hidden: true });
  const labels = marks
    .filter((mark) => mark.label)
    .map((mark) => ({
      at: x(mark),
      node: svgElement("text", { class: "strip-label", x: x(mark), ...low }, mark.label),
    }));
  const ticks = marks.map((mark) =>
    svgElement("line", { class: "tape-tick", x1: x(mark), x2: x(mark), y1: 0, y2: 8 + mark.size * 30 }),
  );
  const look = { class: "strip-picture", viewBox: `0 0 ${WIDTH} ${HEIGHT}`, "aria-hidden": "true" };
  const written = labels.map(({ node }) => node);

  /** @param {StripMark} mark */
  function show(mark) {
    for (const drawn of [cursor, spelled]) drawn.toggleAttribute("hidden", !mark.text);
    for (const end of ["x1", "x2"]) cursor.setAttribute(end, String(x(mark)));
    const middle = Math.min(WIDTH - WORDS_FROM_EDGE, Math.max(WORDS_FROM_EDGE, x(mark)));
    spelled.setAttribute("x", String(middle));
    // Half of a 1/2 beside a 9/16 would read as 1 9/16.
    for (const { at, node } of labels) {
      node.toggleAttribute("hidden", Boolean(mark.text) && Math.abs(at - middle) < WORDS_APART);
    }
    spelled.textContent = mark.text ?? "";
  }

  return { picture: svgElement("svg", look, ticks, written, cursor, spelled), show };
}
