import { svgElement } from "../element.js";

/** @import { StripMark } from "../../python/contract.d.ts" */
/** @typedef {ReturnType<typeof stripPicture>} StripPicture */
/** @typedef {{from: number, shown: number}} Grown where its face begins, and how much of the strip is on it */

const AT_REST = { from: 0, shown: 1 };
/** How near the spelled mark a label may be, as a part of the face: half of a 1/2 beside a 9/16 would read as 1 9/16. */
const WORDS_APART = 0.2;
const EDGE = 0.12;
const FOOT = 50;

/**
 * The marks drawn, and the one that is touched. Places are parts of the face, so that it may have any width.
 * @param {StripMark[]} marks
 */
export function stripPicture(marks) {
  const cursor = svgElement("line", { class: "strip-cursor", y1: 0, y2: "100%" });
  const spelled = svgElement("text", { class: "strip-spelled", y: FOOT, "text-anchor": "middle" });
  const ticks = marks.map(({ at, size }) => ({
    at,
    node: svgElement("line", { class: "tape-tick", y1: 0, y2: 8 + size * 28 }),
  }));
  const labels = marks
    .filter(({ label }) => label)
    .map(({ at, label }) => ({
      at,
      node: svgElement("text", { class: "strip-label", y: FOOT, "text-anchor": "middle" }, label),
    }));
  const drawn = [...ticks, ...labels].map(({ node }) => node);
  const node = svgElement("svg", { class: "strip-picture", "aria-hidden": "true" }, drawn, cursor, spelled);
  let view = AT_REST;
  let now = marks[0];

  const place = (/** @type {number} */ at) => (at - view.from) / view.shown;

  function draw() {
    const spelledAt = Math.min(1 - EDGE, Math.max(EDGE, place(now.at)));
    for (const { at, node } of ticks) put(node, ["x1", "x2"], place(at));
    for (const { at, node } of labels) {
      put(node, ["x"], place(at));
      node.toggleAttribute("hidden", Boolean(now.text) && Math.abs(place(at) - spelledAt) < WORDS_APART);
    }
    put(cursor, ["x1", "x2"], place(now.at));
    put(spelled, ["x"], spelledAt);
    for (const each of [cursor, spelled]) each.toggleAttribute("hidden", !now.text);
    spelled.textContent = now.text ?? "";
  }

  return {
    node,
    /** @param {Grown | null} grown null for the whole strip */
    grow(grown) {
      view = grown ?? AT_REST;
      draw();
    },
    /** @param {StripMark} mark */
    show(mark) {
      now = mark;
      draw();
    },
  };
}

/**
 * @param {SVGElement} node
 * @param {string[]} attributes
 * @param {number} part of the width
 */
function put(node, attributes, part) {
  for (const attribute of attributes) node.setAttribute(attribute, `${part * 100}%`);
}
