import { cross, edgeTowards, enters, meet } from "./strokes.js";

/** Clear of any line, and of another text, by so much. */
const LINE_ROOM = 1.5;
const TEXT_ROOM = [4, 1];
const EDGE = 2;
/** So far a text may be from its place and still be seen to belong there, if no line lies between. */
const NEAR = 30;
const FAR = [150, 140];
/** The arrow of a dimension, and the room that its line leaves around its text. */
const ARROW = 7;
const GAP = 3;

const AROUND = [];
for (let x = -FAR[0]; x <= FAR[0]; x += 6) for (let y = -FAR[1]; y <= FAR[1]; y += 4) AROUND.push([x, y]);
const far = ([x, y]) => Math.hypot(x * 0.8, y);
AROUND.sort((one, other) => far(one) - far(other));

/**
 * Find room for the texts of a drawing: none cut off at the sides, crossed by a line or on another one. A dimension's
 * text interrupts its line where there is room between the arrows, and is else beside it. A text that finds no room in
 * its place goes to the nearest where there is some; over a line, or far away, with a leader back to its place.
 * @param {object[]} texts as `measured` gives them, each with `at`, its middle, and maybe `along`: the ends of its line
 * @param {[number, number][][]} strokes all lines that are drawn
 * @param {number} width of the drawing
 * @returns {object[]} the texts with `x`, `y`, and maybe `gap` (how much of its line it takes, around its middle) and
 *   `leader` (a stroke); `isSqueezed` where there is no room for one
 */
export function withRoom(texts, strokes, width) {
  const lines = [...strokes];
  const placed = [];
  const order = [...texts.keys()].sort((one, other) => looseness(texts[one]) - looseness(texts[other]));
  for (const at of order) {
    const found = roomFor(texts[at], lines, placed, width);
    if (found.leader) lines.push(found.leader);
    placed.push(found);
    found.number = at;
  }
  return placed.sort((one, other) => one.number - other.number);
}

/** What fits on its line is placed first: there it stays. Then what has to be beside its line. */
const looseness = (text) => (!text.along ? 2 : onLine(text).length > 0 ? 0 : 1);

function roomFor(text, lines, placed, width) {
  const isFree = (box, own) =>
    box.x - box.half[0] >= EDGE &&
    box.x + box.half[0] <= width - EDGE &&
    !placed.some((other) => meet(box, other, TEXT_ROOM) || (other.leader && enters(other.leader, box, LINE_ROOM))) &&
    !lines.some((stroke) => stroke !== own && enters(stroke, box, LINE_ROOM));
  const free = (places, own) => places.map((place) => ({ ...text, ...place })).find((box) => isFree(box, own));
  const middle = text.along ? between(text.along, 0.5) : text.at;
  const isNear = (box) => far([box.x - middle[0], box.y - middle[1]]) <= NEAR;
  const isBeside = (box) => isNear(box) && !lines.some((stroke) => cross(stroke, [middle, [box.x, box.y]]));
  const around = AROUND.map(([x, y]) => ({ x: text.at[0] + x, y: text.at[1] + y }));
  const led = (box) => ({ ...box, leader: [middle, edgeTowards(middle, box, GAP)] });
  const isLed = ({ leader }) => !placed.some((other) => enters(leader, other, LINE_ROOM));
  return (
    free(onLine(text), text.along) ??
    free(besideLine(text)) ??
    (text.along
      ? null
      : around
          .map((place) => ({ ...text, ...place }))
          .filter((box) => isNear(box))
          .find((box) => isFree(box) && isBeside(box))) ??
    around.map((place) => led({ ...text, ...place })).find((box) => isFree(box) && isLed(box)) ?? {
      ...text,
      x: text.at[0],
      y: text.at[1],
      isSqueezed: true,
    }
  );
}

const between = ([[x0, y0], [x1, y1]], share) => [x0 + (x1 - x0) * share, y0 + (y1 - y0) * share];

function measuresOf({ along: [[x0, y0], [x1, y1]], half }) {
  const long = Math.hypot(x1 - x0, y1 - y0) || 1;
  const [dx, dy] = [(x1 - x0) / long, (y1 - y0) / long];
  const gap = 2 * (Math.min(half[0] / Math.abs(dx || 1e-9), half[1] / Math.abs(dy || 1e-9)) + GAP);
  return { long, dx, dy, gap };
}

const SLID = [0, 0.3, -0.3, 0.6, -0.6, 1, -1];

/** Places on a dimension's own line between its arrows, the middle first. */
function onLine(text) {
  if (!text.along) return [];
  const { long, gap } = measuresOf(text);
  const room = (long - 2 * ARROW - gap) / 2;
  if (room < 0) return [];
  return SLID.map((slid) => {
    const [x, y] = between(text.along, 0.5 + (slid * room) / long);
    return { x, y, gap };
  });
}

const SLIDES = Array.from({ length: 25 }, (_, number) => Math.ceil(number / 2) * 6 * (number % 2 ? 1 : -1));

/** Places beside a dimension's line, on its outer side first, and beyond its ends. */
function besideLine(text) {
  if (!text.along) return [];
  const { long, dx, dy } = measuresOf(text);
  const [across, up] = text.half;
  const away = across * Math.abs(dy) + up * Math.abs(dx) + GAP + 2;
  const beyond = across * Math.abs(dx) + up * Math.abs(dy) + GAP + 2;
  const beside = [1, -1].flatMap((way) =>
    SLIDES.map((slid) => {
      const [x, y] = between(text.along, 0.5 + slid / long);
      return { x: x + way * dy * away, y: y - way * dx * away };
    }),
  );
  const ends = [1, 0].map((end) => {
    const way = end ? 1 : -1;
    const [x, y] = text.along[end];
    return { x: x + way * dx * beyond, y: y + way * dy * beyond };
  });
  return [...beside, ...ends];
}
