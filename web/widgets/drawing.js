import { svgElement } from "./element.js";

const WIDTH = 328;
const EDGE = 6;
const ARROW = 7;

/** A drawing of the core as SVG: it sends shapes in real units, here they are only scaled to the screen. */
export function drawing(drawn, look = "") {
  const [left, top, right, bottom] = drawn.box;
  const scale = (WIDTH - 2 * EDGE) / (right - left);
  const place = ([x, y]) => [EDGE + (x - left) * scale, EDGE + (y - top) * scale];
  const height = (bottom - top) * scale + 2 * EDGE;
  return svgElement(
    "svg",
    { class: `drawing ${look}`, viewBox: `0 0 ${WIDTH} ${height.toFixed(1)}`, role: "img", "aria-label": drawn.words },
    drawn.shapes.map((shape) => SHAPE[shape.kind](shape, place, scale)),
  );
}

const joined = (points) => points.map((point) => point.map((each) => each.toFixed(2)).join(",")).join(" ");

const SHAPE = {
  polygon: (shape, place) =>
    svgElement("polygon", { class: `shape-${shape.role}`, points: joined(shape.points.map(place)) }),

  line: (shape, place) =>
    svgElement("polyline", { class: `line-${shape.role}`, points: joined([place(shape.from), place(shape.to)]) }),

  label: (shape, place) => {
    const [x, y] = place(shape.at);
    return svgElement(
      "text",
      { class: `label-${shape.role}`, x, y, "text-anchor": shape.align, "dominant-baseline": "central" },
      shape.text,
    );
  },

  arc: (shape, place, scale) => {
    const [x, y] = place(shape.center);
    const radius = shape.radius * scale;
    const on = (degrees) => {
      const turn = (degrees * Math.PI) / 180;
      return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
    };
    const [start, end] = [on(shape.start), on(shape.start + shape.sweep)];
    const large = Math.abs(shape.sweep) > 180 ? 1 : 0;
    const label = on(shape.start + shape.sweep / 2);
    return svgElement(
      "g",
      {},
      svgElement("path", {
        class: "line-arc",
        d: `M${start} A${radius} ${radius} 0 ${large} ${shape.sweep > 0 ? 1 : 0} ${end}`,
      }),
      svgElement(
        "text",
        { class: "label-note", x: label[0], y: label[1], "text-anchor": "middle", "dominant-baseline": "central" },
        shape.text ?? "",
      ),
    );
  },

  dimension: (shape, place, scale) => {
    const [a, b] = [place(shape.from), place(shape.to)];
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const along = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
    const away = [along[1] * shape.offset * scale, -along[0] * shape.offset * scale];
    const [from, to] = [a, b].map((point) => [point[0] + away[0], point[1] + away[1]]);
    const middle = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const head = (tip, way) => {
      const back = [tip[0] + way * along[0] * ARROW, tip[1] + way * along[1] * ARROW];
      const side = [along[1] * ARROW * 0.35, -along[0] * ARROW * 0.35];
      return svgElement("polygon", {
        class: "dimension-arrow",
        points: joined([tip, [back[0] + side[0], back[1] + side[1]], [back[0] - side[0], back[1] - side[1]]]),
      });
    };
    return svgElement(
      "g",
      { class: `dimension dimension-${shape.role}` },
      svgElement("polyline", { class: "dimension-witness", points: joined([a, from]) }),
      svgElement("polyline", { class: "dimension-witness", points: joined([b, to]) }),
      svgElement("polyline", { class: "dimension-line", points: joined([from, to]) }),
      head(from, 1),
      head(to, -1),
      svgElement(
        "text",
        { x: middle[0], y: middle[1], "text-anchor": "middle", "dominant-baseline": "central" },
        shape.text,
      ),
    );
  },
};
