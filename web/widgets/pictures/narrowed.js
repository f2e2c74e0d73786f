/** @import { OnScreen, Stroke } from "./picture.d.ts" */

/** Narrower than this the drawing itself could not be read; its texts then find room elsewhere. */
const LEAST = 0.6;
const STEP = 0.02;

/**
 * The shapes of a drawing as large as the texts at its sides allow, which keep their size and their places beside it.
 * Texts along a level line slide on it, and need no room of their own.
 * @param {(share: number, start: number) => OnScreen[]} build the shapes, by how much narrower and from where
 * @param {{drawn: number, margin: number, width: number}} room how wide it is, what is free beside a text, and the whole
 */
export function narrowed(build, { drawn, margin, width }) {
  const centered = (/** @type {number} */ share) => (width - drawn * share) / 2;
  for (let share = 1; share >= LEAST; share -= STEP) {
    const shapes = build(share, 0);
    const [left, right] = reachOf(shapes);
    const [least, most] = [margin - left, width - margin - right];
    if (least <= most) return build(share, Math.min(Math.max(centered(share), least), most));
  }
  return build(LEAST, centered(LEAST));
}

/** @param {OnScreen[]} shapes */
function reachOf(shapes) {
  const xs = shapes.flatMap(({ strokes }) => strokes.flat().map(([x]) => x));
  const texts = shapes
    .map(({ text }) => text ?? null)
    .filter((text) => text !== null)
    .filter(({ along }) => !along || isUpright(along));
  return [
    Math.min(...xs, ...texts.map(({ at: [x], half: [across] }) => x - across)),
    Math.max(...xs, ...texts.map(({ at: [x], half: [across] }) => x + across)),
  ];
}

/** @param {Stroke} stroke */
const isUpright = ([[x0, y0], [x1, y1]]) => Math.abs(x1 - x0) < Math.abs(y1 - y0) / 2;
