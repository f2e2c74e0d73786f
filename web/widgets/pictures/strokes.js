/** @import { Box, Half, Point, Stroke } from "./picture.d.ts" */

/** Strokes of a drawing: each [[x, y], [x, y]], in the units of its viewBox. Boxes: {x, y, half: [across, up]}. */

/**
 * The strokes from point to point; `isClosed` goes back to the first.
 * @param {Point[]} points
 * @returns {Stroke[]}
 */
export const strokesOf = (points, isClosed = false) =>
  (isClosed ? [...points, points[0]] : points).slice(1).map((point, at) => [points[at], point]);

/**
 * Whether a stroke comes into a box that is larger by `room` all around (Liang and Barsky's clipping).
 * @param {Stroke} stroke
 * @param {Box} box
 */
export function enters([[x0, y0], [x1, y1]], { x, y, half: [across, up] }, room = 0) {
  let [from, to] = [0, 1];
  for (const [way, left] of [
    [x0 - x1, x0 - (x - across - room)],
    [x1 - x0, x + across + room - x0],
    [y0 - y1, y0 - (y - up - room)],
    [y1 - y0, y + up + room - y0],
  ]) {
    if (way === 0 && left < 0) return false;
    if (way < 0) from = Math.max(from, left / way);
    if (way > 0) to = Math.min(to, left / way);
  }
  return from < to;
}

/**
 * @param {Stroke} stroke
 * @param {Point} point
 */
const side = ([[x0, y0], [x1, y1]], [x, y]) => (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0);

/**
 * Whether two strokes cross; touching is not crossing.
 * @param {Stroke} one
 * @param {Stroke} other
 */
export const cross = (one, other) =>
  side(one, other[0]) * side(one, other[1]) < 0 && side(other, one[0]) * side(other, one[1]) < 0;

/**
 * Whether two boxes come nearer to each other than `room`, across and up.
 * @param {Box} one
 * @param {Box} other
 * @param {Half} room
 */
export const meet = (one, other, [across, up]) =>
  Math.abs(one.x - other.x) < one.half[0] + other.half[0] + across &&
  Math.abs(one.y - other.y) < one.half[1] + other.half[1] + up;

/**
 * Where a stroke from a point to the middle of a box comes to its edge, `room` before it.
 * @param {Point} point
 * @param {Box} box
 * @param {number} room
 * @returns {Point}
 */
export function edgeTowards([x, y], { x: cx, y: cy, half: [across, up] }, room) {
  const [dx, dy] = [x - cx, y - cy];
  const share = Math.min(1, Math.min((across + room) / Math.abs(dx || 1e-9), (up + room) / Math.abs(dy || 1e-9)));
  return [cx + dx * share, cy + dy * share];
}
