import { drawing } from "./drawing.js";

/** A drawing to be seen from afar: the wood and the cuts fill it, and only what is written on the wood is left. */
export function boldDrawing(drawn) {
  const corners = drawn.shapes.flatMap(cornersOf);
  const [xs, ys] = [0, 1].map((axis) => corners.map((corner) => corner[axis]));
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const isOnWood = ([x, y]) => x > left && x < right && y > top && y < bottom;
  const shapes = drawn.shapes
    .filter(({ kind, at }) => kind !== "dimension" && (kind !== "label" || isOnWood(at)))
    .map((shape) => (shape.kind === "arc" ? { ...shape, text: "" } : shape));
  return drawing({ ...drawn, box: [left, top, right, bottom], shapes }, "drawing-bold");
}

const cornersOf = (shape) =>
  ({ polygon: () => shape.points, line: () => [shape.from, shape.to] })[shape.kind]?.() ?? [];
