import { svgElement } from "./element.js";

const WIDTH = 344;
const MARGIN = 14;
const HEIGHT = 66;
const TALLEST = 40;

/** A stretch of tape around a value, with the mark to look for. The core says where the ticks are. */
export function tape(drawn) {
  const x = (at) => MARGIN + ((at - drawn.from) / (drawn.to - drawn.from)) * (WIDTH - 2 * MARGIN);
  const ticks = drawn.ticks.map((tick) =>
    svgElement("line", { class: "tape-tick", x1: x(tick.at), x2: x(tick.at), y1: 0, y2: 10 + tick.size * (TALLEST - 10) }),
  );
  const labels = drawn.ticks
    .filter((tick) => tick.label)
    .map((tick) => svgElement("text", { class: "tape-label", x: x(tick.at), y: HEIGHT - 6, "text-anchor": "middle" }, tick.label));
  const at = x(drawn.at);
  const arrow = `M${at} ${TALLEST + 4} l8 16 h-16 z`;
  return svgElement(
    "svg",
    { class: "tape", viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: "img", "aria-label": `On the tape: ${drawn.words}` },
    svgElement("line", { class: "tape-edge", x1: 0, x2: WIDTH, y1: 0, y2: 0 }),
    ticks,
    labels,
    svgElement("line", { class: "tape-mark", x1: at, x2: at, y1: 0, y2: TALLEST + 6 }),
    svgElement("path", { class: "tape-arrow", d: arrow }),
  );
}
