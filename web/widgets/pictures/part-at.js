/** @import { Area, Point, Stroke } from "./picture.d.ts" */

/** Half of what a finger needs, on the screen. */
const FINGER = 22;

/**
 * The part that a finger meant: of the narrow ones in its reach the nearest that is in sight there, or else the one
 * that it is on; "" for none.
 * @param {Point} point
 * @param {Area[]} areas in the order in which they are drawn
 * @param {number} pixel how much of the drawing one pixel of the screen is
 */
export function partAt(point, areas, pixel) {
  const reach = FINGER * pixel;
  let [found, best] = ["", Infinity];
  for (const [at, area] of areas.entries()) {
    if (!isNarrow(area, 2 * reach)) continue;
    const { away, spot } = nearest(point, area.corners);
    const isHidden = areas.slice(at + 1).some((later) => !later.isOpen && isWithin(spot, later.corners, pixel));
    if (away <= Math.min(reach, best) && !isHidden) [found, best] = [area.part, away];
  }
  return found || (areas.findLast(({ corners }) => isInside(point, corners))?.part ?? "");
}

/**
 * @param {Area} area
 * @param {number} least
 */
function isNarrow({ corners }, least) {
  const size = [0, 1].map((axis) => {
    const places = corners.map((corner) => corner[axis]);
    return Math.max(...places) - Math.min(...places);
  });
  return Math.min(...size) < least;
}

/**
 * How far a point is from an outline, and the spot of it that is nearest: 0 and the point itself inside.
 * @param {Point} point
 * @param {Point[]} corners
 */
function nearest(point, corners) {
  if (isInside(point, corners)) return { away: 0, spot: point };
  const spots = edges(corners).map((edge) => onEdge(point, edge));
  const far = (/** @type {Point} */ spot) => Math.hypot(spot[0] - point[0], spot[1] - point[1]);
  const spot = spots.reduce((best, each) => (far(each) < far(best) ? each : best));
  return { away: far(spot), spot };
}

/** @param {Point[]} corners */
const edges = (corners) =>
  corners.map((corner, at) => /** @type {Stroke} */ ([corner, corners[(at + 1) % corners.length]]));

/**
 * @param {Point} point
 * @param {Stroke} edge
 * @returns {Point}
 */
function onEdge([x, y], [[x0, y0], [x1, y1]]) {
  const long = (x1 - x0) ** 2 + (y1 - y0) ** 2 || 1;
  const share = Math.min(1, Math.max(0, ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / long));
  return [x0 + (x1 - x0) * share, y0 + (y1 - y0) * share];
}

/**
 * Whether a spot is on an outline and not at its very edge.
 * @param {Point} spot
 * @param {Point[]} corners
 * @param {number} edge
 */
const isWithin = (spot, corners, edge) =>
  isInside(spot, corners) &&
  edges(corners).every((each) => {
    const [x, y] = onEdge(spot, each);
    return Math.hypot(x - spot[0], y - spot[1]) > edge / 2;
  });

/**
 * @param {Point} point
 * @param {Point[]} corners
 */
const isInside = ([x, y], corners) =>
  edges(corners).filter(([[x0, y0], [x1, y1]]) => y0 > y !== y1 > y && x < x0 + ((x1 - x0) * (y - y0)) / (y1 - y0))
    .length %
    2 ===
  1;
