/** @import { Place, Point, Stroke, Written } from "./picture.d.ts" */

/** The arrow of a dimension, and the room that its line leaves around its text. */
const ARROW = 7;
export const GAP = 3;
const BESIDE = GAP + 2;
const SLID = [0, 0.3, -0.3, 0.6, -0.6, 1, -1];
const SLIDES = Array.from({ length: 25 }, (_, number) => Math.ceil(number / 2) * 6 * (number % 2 ? 1 : -1));

/**
 * The point at a share of the way along a stroke.
 * @param {Stroke} stroke
 * @param {number} share
 * @returns {Point}
 */
export const between = ([[x0, y0], [x1, y1]], share) => [x0 + (x1 - x0) * share, y0 + (y1 - y0) * share];

/**
 * How far away a place is felt to be: less along a line of text than across it.
 * @param {Point} from
 */
export const far = ([x, y]) => Math.hypot(x * 0.8, y);

/**
 * All places around one, [x, y] from it, the nearest first.
 * @type {Point[]}
 */
export const AROUND = [];
for (let x = -150; x <= 150; x += 6) for (let y = -140; y <= 140; y += 4) AROUND.push([x, y]);
AROUND.sort((one, other) => far(one) - far(other));

/**
 * @param {Stroke} along
 * @param {Written} text
 */
function measuresOf([[x0, y0], [x1, y1]], { half: [across, up] }) {
  const long = Math.hypot(x1 - x0, y1 - y0) || 1;
  const [dx, dy] = [(x1 - x0) / long, (y1 - y0) / long];
  const [level, upright] = [Math.abs(dx || 1e-9), Math.abs(dy || 1e-9)];
  return { long, dx, dy, level, upright, gap: 2 * (Math.min(across / level, up / upright) + GAP) };
}

/**
 * Places on a dimension's own line between its arrows, the middle first; none without room for it.
 * @param {Written} text
 * @returns {Place[]}
 */
export function onLine(text) {
  const { along } = text;
  if (!along) return [];
  const { long, gap } = measuresOf(along, text);
  const room = (long - 2 * ARROW - gap) / 2;
  if (room < 0) return [];
  return SLID.map((slid) => {
    const [x, y] = between(along, 0.5 + (slid * room) / long);
    return { x, y, gap };
  });
}

/**
 * Places beside a dimension's line, on its outer side first, and beyond its ends.
 * @param {Written} text
 * @returns {Place[]}
 */
export function besideLine(text) {
  const { along } = text;
  if (!along) return [];
  const { long, dx, dy, level, upright } = measuresOf(along, text);
  const [across, up] = text.half;
  const away = across * upright + up * level + BESIDE;
  const beyond = across * level + up * upright + BESIDE;
  const beside = [1, -1].flatMap((way) =>
    SLIDES.map((slid) => {
      const [x, y] = between(along, 0.5 + slid / long);
      return { x: x + way * dy * away, y: y - way * dx * away };
    }),
  );
  const ends = [1, -1].map((way) => {
    const [x, y] = along[way > 0 ? 1 : 0];
    return { x: x + way * dx * beyond, y: y + way * dy * beyond };
  });
  return [...beside, ...ends];
}
