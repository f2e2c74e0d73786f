import { cross, edgeTowards, enters, meet } from "./strokes.js";
import { AROUND, besideLine, between, far, GAP, onLine } from "./text-places.js";

/** @import { Box, Half, Place, Placed, Point, Stroke, Written } from "./picture.d.ts" */

/** Clear of any line, and of another text, by so much. */
const LINE_ROOM = 1.5;
/** @type {Half} */
const TEXT_ROOM = [4, 1];
const EDGE = 2;
/** So far a text may be from its place and still be seen to belong there, if no line lies between. */
const NEAR = 30;

/**
 * Find room for the texts of a drawing: none cut off at the sides, crossed by a line or on another one. A dimension's
 * text interrupts its line where there is room between the arrows, and is else beside it. A text that finds no room in
 * its place goes to the nearest where there is some; over a line, or far away, with a leader back to its place.
 * @template {Written} Text
 * @param {Text[]} texts
 * @param {Stroke[]} strokes all lines that are drawn
 * @param {number} width of the drawing
 * @returns {Placed<Text>[]}
 */
export function withRoom(texts, strokes, width) {
  const lines = [...strokes];
  /** @type {Placed<Text>[]} */
  const placed = [];
  for (const text of [...texts].sort((one, other) => looseness(one) - looseness(other))) {
    const found = roomFor(text, lines, placed, width);
    if (found.leader) lines.push(found.leader);
    placed.push(found);
  }
  return placed;
}

/**
 * What fits on its line is placed first: there it stays. Then what has to be beside its line.
 * @param {Written} text
 */
const looseness = (text) => (!text.along ? 2 : onLine(text).length > 0 ? 0 : 1);

/**
 * @template {Written} Text
 * @param {Text} text
 * @param {Stroke[]} lines
 * @param {Box[]} placed
 * @param {number} width
 * @returns {Placed<Text>}
 */
function roomFor(text, lines, placed, width) {
  const middle = text.along ? between(text.along, 0.5) : text.at;
  const put = (/** @type {Place} */ place) => ({ ...text, ...place });
  const offset = (/** @type {Point} */ [x, y]) => put({ x: text.at[0] + x, y: text.at[1] + y });
  const led = (/** @type {Point} */ place) => {
    const box = offset(place);
    /** @type {Stroke} */
    const leader = [middle, edgeTowards(middle, box, GAP)];
    return { ...box, leader };
  };

  /**
   * @param {Box} box
   * @param {Stroke} [own]
   */
  const isFree = (box, own) =>
    box.x - box.half[0] >= EDGE &&
    box.x + box.half[0] <= width - EDGE &&
    !placed.some((other) => meet(box, other, TEXT_ROOM)) &&
    !lines.some((stroke) => stroke !== own && enters(stroke, box, LINE_ROOM));
  const isFreeOnLine = (/** @type {Box} */ box) => isFree(box, text.along);
  const isNear = (/** @type {Box} */ box) => far([box.x - middle[0], box.y - middle[1]]) <= NEAR;
  const isBeside = (/** @type {Box} */ box) => !lines.some((stroke) => cross(stroke, [middle, [box.x, box.y]]));
  const isFreeNear = (box) => !text.along && isNear(box) && isFree(box) && isBeside(box);
  const isFreeLed = (box) => isFree(box) && !placed.some((other) => enters(box.leader, other, LINE_ROOM));

  return (
    first(onLine(text), put, isFreeOnLine) ??
    first(besideLine(text), put, (box) => isFree(box)) ??
    first(AROUND, offset, isFreeNear) ??
    first(AROUND, led, isFreeLed) ?? { ...offset([0, 0]), isSqueezed: true }
  );
}

/**
 * The first of some places whose box is good.
 * @template Place, Made
 * @param {Place[]} places
 * @param {(place: Place) => Made} make
 * @param {(box: Made) => boolean} isGood
 */
function first(places, make, isGood) {
  for (const place of places) {
    const box = make(place);
    if (isGood(box)) return box;
  }
  return null;
}
