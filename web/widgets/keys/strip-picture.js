import { svgElement } from "../element.js";

/** @import { StripMark } from "../../python/contract.d.ts" */
/** @typedef {ReturnType<typeof stripPicture>} StripPicture */
/** @typedef {{from: number, shown: number}} Grown where its face begins, and how much of the strip is on it */

const AT_REST = { from: 0, shown: 1 };
/** Half a character, and the room between two texts, as parts of the face. */
const HALF_CHARACTER = 0.025;
const GAP = 0.03;
const FOOT = 50;

/**
 * Where the middle of a text is, so that it is whole on the face.
 * @param {number} part
 * @param {string} text
 */
const inside = (part, text) => {
  const half = text.length * HALF_CHARACTER;
  return Math.min(1 - half, Math.max(half, part));
};

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
    .map(({ at, label: text }) => ({
      at,
      text,
      node: svgElement("text", { class: "strip-label", y: FOOT, "text-anchor": "middle" }, text),
    }));
  const drawn = [...ticks, ...labels].map(({ node }) => node);
  const node = svgElement("svg", { class: "strip-picture", "aria-hidden": "true" }, drawn, cursor, spelled);
  let view = AT_REST;
  /** @type {StripMark | null} */
  let now = null;

  const place = (/** @type {number} */ at) => (at - view.from) / view.shown;

  function draw() {
    const text = now?.text ?? "";
    const at = place(now?.at ?? 0);
    for (const each of ticks) put(each.node, ["x1", "x2"], place(each.at));
    for (const each of labels) put(each.node, ["x"], inside(place(each.at), each.text));
    put(cursor, ["x1", "x2"], at);
    put(spelled, ["x"], inside(at, text));
    spelled.textContent = text;
    for (const each of [cursor, spelled]) each.toggleAttribute("hidden", !text);
    for (const each of labels) each.node.toggleAttribute("hidden", !hasRoom(each, text, at));
  }

  /**
   * Whether a label is on the face and away from the spelled mark: half of a 1/2 beside a 9/16 would read as 1 9/16.
   * @param {{at: number, text: string}} label
   * @param {string} text
   * @param {number} at
   */
  function hasRoom(label, text, at) {
    const part = place(label.at);
    const apart = (label.text.length + text.length) * HALF_CHARACTER + GAP;
    const isFree = !text || Math.abs(inside(part, label.text) - inside(at, text)) >= apart;
    return isFree && part >= 0 && part <= 1;
  }

  return {
    node,
    /** @param {Grown | null} grown null for the whole strip */
    grow(grown) {
      view = grown ?? AT_REST;
      draw();
    },
    /** @param {StripMark | null} mark null where none stands in the field */
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
