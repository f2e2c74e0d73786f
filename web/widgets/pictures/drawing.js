import { svgElement } from "../element.js";
import { touchable } from "./dimension-touch.js";
import { SHAPE } from "./drawing-shapes.js";
import { measured } from "./measured.js";
import { narrowed } from "./narrowed.js";
import { touchableParts, touchedIn } from "./part-touch.js";
import { withRoom } from "./text-room.js";

/** @import { Drawing } from "../../python/contract.d.ts" */
/** @import { Fields, OnScreen, Parts, Placed, Stroke, ToScreen, Written } from "./picture.d.ts" */

/** @typedef {{fields?: Fields, parts?: Parts}} Touched what is done with what is touched */

const WIDTH = 328;
const EDGE = 6;
const MARGIN = 3;
const LINE = 1.2;
/** So far from the end of its line a dimension's text may stand. */
const BESIDE = 34;
/** Lower than this the drawing itself could not be read, whatever room it is to take. */
const LOWEST = 44;
/** How much higher than it should be a drawing may get, so that each text stands where it belongs. */
const HIGHER = [1, 1.25, 1.5];

/**
 * A drawing of the core as SVG: it sends shapes in real units, here they are only scaled to the screen, and each text
 * finds room to be read, as wide as this browser's font is; in smaller letters where there is too little.
 * @param {Drawing} drawn
 * @param {object} [how]
 * @param {string} [how.look] a class of its own
 * @param {number} [how.high] how high it should be at most, in the units of a narrow phone's screen
 * @param {Fields} [how.fields] the fields that its dimensions open
 * @param {Parts} [how.parts] what is done with the part that is touched
 */
export function drawing(drawn, { look = "", high = Infinity, fields, parts } = {}) {
  const classes = [`drawing ${look}`, `drawing drawing-small ${look}`];
  const heights = high === Infinity ? [] : HIGHER.map((share) => high * share);
  const tries = [...heights, Infinity].flatMap((most) =>
    classes.map((className) => () => lowEnough(drawn, className, most, { fields, parts })),
  );
  /** @type {ReturnType<typeof laidOut> | null} */
  let best = null;
  for (const [at, next] of tries.entries()) {
    if (at >= 2 * heights.length && best?.isLegible) break;
    const tried = next();
    if (!best?.isLegible) best = tried;
    if (tried.isLegible && (tried.isClear || heights.length === 0)) return tried.node;
  }
  return best?.node ?? svgElement("svg");
}

/**
 * As wide as the screen, or narrower until it is as low as it should be.
 * @param {Drawing} drawn
 * @param {string} className
 * @param {number} most
 * @param {Touched} touched
 */
function lowEnough(drawn, className, most, touched) {
  const [left, top, right, bottom] = drawn.box;
  const wide = (WIDTH - 2 * EDGE) / (right - left);
  const first = Math.min(wide, Math.max(LOWEST, most - 2 * EDGE) / (bottom - top));
  const whole = laidOut(drawn, className, first, touched);
  if (whole.high <= most) return whole;
  const room = most - (whole.high - (bottom - top) * first);
  return laidOut(drawn, className, Math.min(first, Math.max(LOWEST, room) / (bottom - top)), touched);
}

/**
 * @param {Drawing} drawn
 * @param {string} className
 * @param {number} whole how large an inch is
 * @param {Touched} touched
 */
function laidOut(drawn, className, whole, { fields, parts }) {
  const [left, top, right, bottom] = drawn.box;
  const texts = measured(drawn.shapes, className, WIDTH - 2 * EDGE);
  let low = 0;
  const build = (/** @type {number} */ share, /** @type {number} */ start) => {
    const scale = whole * share;
    low = EDGE + (bottom - top) * scale;
    /** @type {ToScreen} */
    const place = ([x, y]) => [start + (x - left) * scale, EDGE + (y - top) * scale];
    return drawn.shapes.map((shape, number) => SHAPE[shape.kind](shape, place, scale, texts[number]));
  };
  const shapes = narrowed(build, { drawn: (right - left) * whole, margin: MARGIN, width: WIDTH });
  const strokes = shapes.flatMap(({ strokes: own }) => own);
  const withTexts = shapes.flatMap(({ text }, shape) => (text ? [{ ...text, shape }] : []));
  const placed = withRoom(withTexts, strokes, WIDTH);
  const [from, to] = grown(placed, strokes, low);
  const byShape = new Map(placed.map((text) => [text.shape, text]));
  const nodes = [
    shapes.map((shape, number) => grouped(shape, shape.draw(byShape.get(number)))),
    placed.map(({ leader }) => (leader ? leaderOf(leader) : [])),
    placed.map((text) => grouped(shapes[text.shape], [written(text)])),
  ].flat();
  const size = { class: className, viewBox: `0 ${from.toFixed(1)} ${WIDTH} ${(to - from).toFixed(1)}` };
  const named = { role: "img", "aria-label": drawn.words };
  const areas = shapes.flatMap(({ area }) => (area ? [area] : []));
  const touched = [
    ...(parts ? touchableParts(areas, parts) : []),
    ...(fields ? touchable(drawn.shapes, byShape, fields) : []),
  ];
  const node = touched.length
    ? svgElement("svg", size, svgElement("g", named, nodes), touched)
    : svgElement("svg", { ...size, ...named }, nodes);
  if (parts) touchedIn(node, areas, parts);
  return {
    node,
    high: to - from,
    isLegible: placed.every(({ isSqueezed }) => !isSqueezed),
    isClear: placed.every(isNear),
  };
}

/**
 * Whether a text stands where one looks for it: without a leader, and a dimension's beside its line.
 * @param {Placed} text
 */
function isNear({ leader, along, x, y }) {
  if (leader) return false;
  if (!along) return true;
  const [[x0, y0], [x1, y1]] = along;
  return Math.hypot(x - (x0 + x1) / 2, y - (y0 + y1) / 2) < Math.hypot(x1 - x0, y1 - y0) / 2 + BESIDE;
}

/**
 * It grows up and down to what its texts and lines take; it never grows wider.
 * @param {Placed[]} texts
 * @param {Stroke[]} strokes
 * @param {number} low
 */
const grown = (texts, strokes, low) => [
  Math.min(EDGE, ...texts.map(({ y, half }) => y - half[1]), ...strokes.flat().map(([, y]) => y)) - EDGE,
  Math.max(low, ...texts.map(({ y, half }) => y + half[1]), ...strokes.flat().map(([, y]) => y)) + EDGE,
];

/**
 * @param {OnScreen} shape
 * @param {Node[]} nodes
 */
const grouped = ({ group }, nodes) => (group ? svgElement("g", { class: group }, nodes) : nodes);

/** @param {Stroke} leader */
const leaderOf = ([[x0, y0], [x1, y1]]) => [
  svgElement("polyline", { class: "leader", points: `${x0},${y0} ${x1},${y1}` }),
  svgElement("circle", { class: "leader-foot", cx: x0, cy: y0, r: 1.5 }),
];

/** @param {Placed} text */
function written({ lines, look, align, x, y, half, size }) {
  const side = x + { start: -half[0], middle: 0, end: half[0] }[align];
  const attributes = { class: look, x: side, y, "text-anchor": align, "dominant-baseline": "central" };
  if (lines.length === 1) return svgElement("text", attributes, lines[0]);
  const first = y - (size * LINE * (lines.length - 1)) / 2;
  return svgElement(
    "text",
    attributes,
    lines.map((line, number) => svgElement("tspan", { x: side, y: first + size * LINE * number }, line)),
  );
}
