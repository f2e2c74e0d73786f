import { svgElement } from "../element.js";
import { strokesOf } from "./strokes.js";

const ARROW = 7;
const STEPS = 16;
const ROOM = 4;

const joined = (points) => points.map((point) => point.map((each) => each.toFixed(2)).join(",")).join(" ");
const line = (className, points) => svgElement("polyline", { class: className, points: joined(points) });
const filled = (className, points) => svgElement("polygon", { class: className, points: joined(points) });

/**
 * Each kind of shape of the core on the screen: its `strokes`, its `text` if any (as `measured` gives it, with `at`, its
 * middle, how it is aligned, and `along`, the line that it is of), and `draw`, which gives its nodes once its text has
 * found room.
 */
export const SHAPE = {
  polygon: ({ points, role }, place) => {
    const corners = points.map(place);
    return {
      strokes: role === "space" ? [] : strokesOf(corners, true),
      draw: () => [filled(`shape-${role}`, corners)],
    };
  },

  line: ({ from, to, role }, place) => {
    const ends = [place(from), place(to)];
    return { strokes: [ends], draw: () => [line(`line-${role}`, ends)] };
  },

  label: ({ at, align }, place, _scale, text) => {
    const [x, y] = place(at);
    const by = { start: text.half[0], middle: 0, end: -text.half[0] }[align];
    return { strokes: [], text: { ...text, at: [x + by, y], align }, draw: () => [] };
  },

  arc: ({ center, radius, start, sweep }, place, scale, text) => {
    const [x, y] = place(center);
    const on = (share) => {
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

  dimension: ({ from, to, offset, role }, place, scale, text) => {
    const [a, b] = [place(from), place(to)];
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const along = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
    const away = farEnough(offset * scale, along, text);
    const ends = [a, b].map(([x, y]) => [x + along[1] * away, y - along[0] * away]);
    // Between ends that are close together there is no room for two arrows: they point at them from outside.
    const way = long > 2.5 * ARROW ? 1 : -1;
    const arrows = [head(ends[0], along, way), head(ends[1], along, -way)];
    const whole = way > 0 ? ends : [step(ends[0], along, -2 * ARROW), step(ends[1], along, 2 * ARROW)];
    const witness = [
      [a, ends[0]],
      [b, ends[1]],
    ];
    return {
      strokes: [whole, ...witness, ...arrows.flatMap((points) => strokesOf(points, true))],
      text: text && { ...text, at: step(ends[0], along, long / 2), align: "middle", along: whole },
      draw: ({ x, y, gap } = {}) => [
        ...witness.map((each) => line("dimension-witness", each)),
        ...(gap
          ? [
              [whole[0], step([x, y], along, -gap / 2)],
              [step([x, y], along, gap / 2), whole[1]],
            ]
          : [whole]
        ).map((each) => line("dimension-line", each)),
        ...arrows.map((points) => filled("dimension-arrow", points)),
      ],
      group: `dimension dimension-${role}`,
    };
  },
};

/** The line of a dimension is as far from what it measures as its text takes, so that the text can stand on it. */
function farEnough(away, along, text) {
  const least = text ? text.half[0] * Math.abs(along[1]) + text.half[1] * Math.abs(along[0]) + ROOM : 0;
  return away === 0 || Math.abs(away) > least ? away : Math.sign(away) * least;
}

const step = ([x, y], [dx, dy], by) => [x + dx * by, y + dy * by];

function head(tip, along, way) {
  const back = step(tip, along, way * ARROW);
  const side = [along[1] * ARROW * 0.35, -along[0] * ARROW * 0.35];
  return [tip, step(back, side, 1), step(back, side, -1)];
}
