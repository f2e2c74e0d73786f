import { drawing } from "./drawing.js";

/** @import { Drawing, Shape } from "../../python/contract.d.ts" */

/**
 * A drawing to be seen from afar: the wood and the cuts fill it, and only what is written on the wood is left.
 * @param {Drawing} drawn
 */
export function boldDrawing(drawn) {
  const corners = drawn.shapes.flatMap(cornersOf);
  const [xs, ys] = [0, 1].map((axis) => corners.map((corner) => corner[axis]));
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const isOnWood = (/** @type {number[]} */ [x, y]) => x > left && x < right && y > top && y < bottom;
  const shapes = drawn.shapes
    .filter((shape) => shape.kind !== "dimension" && (shape.kind !== "label" || isOnWood(shape.at)))
    .map((shape) => (shape.kind === "arc" ? { ...shape, text: "" } : shape));
  return drawing({ ...drawn, box: [left, top, right, bottom], shapes }, { look: "drawing-bold" });
}

/**
 * @param {Shape} shape
 * @returns {number[][]}
 */
function cornersOf(shape) {
  if (shape.kind === "polygon") return shape.points;
  return shape.kind === "line" ? [shape.from, shape.to] : [];
}
