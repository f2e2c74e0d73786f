import { svgElement } from "../element.js";
import { strokesOf } from "./strokes.js";

/** @import { Arc, Circle, Dimension, Label, Polygon, Shape, StraightLine } from "../../python/contract.d.ts" */
/** @import { Measured, OnScreen, Place, Point, Stroke, ToScreen } from "./picture.d.ts" */

const ARROW = 7;
const STEPS = 16;
const ROOM = 4;

/** @param {Point[]} points */
const joined = (points) => points.map((point) => point.map((each) => each.toFixed(2)).join(",")).join(" ");
/**
 * @param {string} className
 * @param {Point[]} points
 */
const line = (className, points) => svgElement("polyline", { class: className, points: joined(points) });
/**
 * @param {string} className
 * @param {Point[]} points
 */
const filled = (className, points) => svgElement("polygon", { class: className, points: joined(points) });

/**
 * Each kind of shape of the core on the screen; `any` is a shape of that kind.
 * @type {Record<Shape["kind"], (shape: any, place: ToScreen, scale: number, text: Measured | null) => OnScreen>}
 */
export const SHAPE = {
  polygon: (/** @type {Polygon} */ { points, role, part }, place) => {
    const corners = points.map(place);
    return {
      area: part ? { part, corners, isOpen: role === "ghost" || role === "space" } : undefined,
      strokes: role === "space" ? [] : strokesOf(corners, true),
      draw: () => [filled(`shape-${role}`, corners)],
    };
  },

  line: (/** @type {StraightLine} */ { from, to, role }, place) => {
    /** @type {Stroke} */
    const ends = [place(from), place(to)];
    return { strokes: [ends], draw: () => [line(`line-${role}`, ends)] };
  },

  label: (/** @type {Label & {align: "start" | "middle" | "end"}} */ { at, align }, place, _scale, text) => {
    if (!text) return { strokes: [], draw: () => [] };
    const [x, y] = place(at);
    const by = { start: text.half[0], middle: 0, end: -text.half[0] }[align];
    return { strokes: [], text: { ...text, at: [x + by, y], align }, draw: () => [] };
  },

  arc: (/** @type {Arc} */ { center, radius, start, sweep }, place, scale, text) => {
    const [x, y] = place(center);
    /** @returns {Point} */
    const on = (/** @type {number} */ share) => {
      const turn = ((start + sweep * share) * Math.PI) / 180;
      return [x + radius * scale * Math.cos(turn), y + radius * scale * Math.sin(turn)];
    };
    const points = Array.from({ length: STEPS + 1 }, (_, step) => on(step / STEPS));
    return {
      strokes: strokesOf(points),
      text: text && { ...text, at: on(0.5), align: "middle" },
      draw: () => [line("line-arc", points)],
    };
  },

  circle: (/** @type {Circle} */ { center, radius, role }, place, scale) => {
    const [cx, cy] = place(center);
    const r = radius * scale;
    /** @type {Stroke} */
    const across = [
      [cx - r, cy],
      [cx + r, cy],
    ];
    return { strokes: [across], draw: () => [svgElement("circle", { class: `shape-${role}`, cx, cy, r })] };
  },

  dimension: (/** @type {Dimension} */ { from, to, offset, role }, place, scale, text) => {
    const [a, b] = [place(from), place(to)];
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    /** @type {Point} */
    const along = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
    const away = farEnough(offset * scale, along, text);
    /** @type {Point} */
    const across = [along[1], -along[0]];
    const ends = [step(a, across, away), step(b, across, away)];
    // Between ends that are close together there is no room for two arrows: they point at them from outside.
    const way = long > 2.5 * ARROW ? 1 : -1;
    const arrows = [head(ends[0], along, way), head(ends[1], along, -way)];
    const outside = way > 0 ? 0 : 2 * ARROW;
    /** @type {Stroke} */
    const whole = [step(ends[0], along, -outside), step(ends[1], along, outside)];
    /** @type {Stroke[]} */
    const witness = [
      [a, ends[0]],
      [b, ends[1]],
    ];
    return {
      strokes: [whole, ...witness, ...arrows.flatMap((points) => strokesOf(points, true))],
      text: text && { ...text, at: step(ends[0], along, long / 2), align: "middle", along: whole },
      draw: (at) => [
        ...witness.map((ends) => line("dimension-witness", ends)),
        ...besideText(whole, along, at).map((part) => line("dimension-line", part)),
        ...arrows.map((points) => filled("dimension-arrow", points)),
      ],
      group: `dimension dimension-${role}`,
    };
  },
};

/**
 * What is drawn of a dimension's line, which leaves a gap for its text.
 * @param {Stroke} whole
 * @param {Point} along
 * @param {Place} [at] where the text is
 * @returns {Stroke[]}
 */
function besideText(whole, along, at) {
  if (!at?.gap) return [whole];
  const { x, y, gap } = at;
  return [
    [whole[0], step([x, y], along, -gap / 2)],
    [step([x, y], along, gap / 2), whole[1]],
  ];
}

/**
 * The line of a dimension is as far from what it measures as its text takes, so that the text can stand on it.
 * @param {number} away
 * @param {Point} along
 * @param {Measured | null} text
 */
function farEnough(away, along, text) {
  const least = text ? text.half[0] * Math.abs(along[1]) + text.half[1] * Math.abs(along[0]) + ROOM : 0;
  return away === 0 || Math.abs(away) > least ? away : Math.sign(away) * least;
}

/**
 * @param {Point} point
 * @param {Point} way
 * @param {number} by
 * @returns {Point}
 */
const step = ([x, y], [dx, dy], by) => [x + dx * by, y + dy * by];

/**
 * @param {Point} tip
 * @param {Point} along
 * @param {number} way
 * @returns {Point[]}
 */
function head(tip, along, way) {
  const back = step(tip, along, way * ARROW);
  /** @type {Point} */
  const side = [along[1] * ARROW * 0.35, -along[0] * ARROW * 0.35];
  return [tip, step(back, side, 1), step(back, side, -1)];
}
