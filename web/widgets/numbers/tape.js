import { svgElement } from "../element.js";

/** @import { Tape } from "../../python/contract.d.ts" */

const WIDTH = 344;
const MARGIN = 20;
const HEIGHT = 66;
/** The edge of the tape: the arrow stands above it, so that each number stands at its own tick. */
const EDGE = 12;
const TALLEST = 30;
const HALF_DIGIT = 6.5;

/**
 * A stretch of tape around a value, with the mark to look for. The core says where the ticks are.
 * @param {Tape} drawn
 * @param {number} [part] how much of the stretch to draw, 1 for all of it
 */
export function tape(drawn, part = 1) {
  const span = (drawn.to - drawn.from) * part;
  const from = Math.min(Math.max(drawn.at - span / 2, drawn.from), drawn.to - span);
  const width = WIDTH * part;
  const x = (at) => MARGIN + ((at - from) / span) * (width - 2 * MARGIN);
  const seen = drawn.ticks.filter((tick) => x(tick.at) > 0 && x(tick.at) < width);
  const ticks = seen.map((tick) =>
    svgElement("line", {
      class: "tape-tick",
      x1: x(tick.at),
      x2: x(tick.at),
      y1: EDGE,
      y2: EDGE + 8 + tick.size * (TALLEST - 8),
    }),
  );
  const at = x(drawn.at);
  /** Only a number that is whole within the stretch is shown. */
  const isWhole = ({ label, x }) => x >= label.length * HALF_DIGIT && x <= width - label.length * HALF_DIGIT;
  const labels = apart(
    seen
      .filter((tick) => tick.label)
      .map((tick) => ({ label: tick.label ?? "", x: x(tick.at), away: Math.abs(tick.at - drawn.at) }))
      .filter(isWhole),
  ).map(({ label, x }) =>
    svgElement("text", { class: "tape-label", x, y: HEIGHT - 6, "text-anchor": "middle" }, label),
  );
  return svgElement(
    "svg",
    { class: "tape", viewBox: `0 0 ${width} ${HEIGHT}`, role: "img", "aria-label": `On the tape: ${drawn.words}` },
    svgElement("line", { class: "tape-edge", x1: 0, x2: width, y1: EDGE, y2: EDGE }),
    ticks,
    labels,
    svgElement("line", { class: "tape-mark", x1: at, x2: at, y1: EDGE, y2: EDGE + TALLEST + 2 }),
    svgElement("path", { class: "tape-arrow", d: `M${at} ${EDGE} l7 -12 h-14 z` }),
  );
}

/**
 * Those of some labels that stand beside each other; the ones nearest to the mark stay.
 * @param {{label: string, x: number, away: number}[]} labels
 */
function apart(labels) {
  const half = (/** @type {string} */ label) => label.length * HALF_DIGIT;
  /** @type {typeof labels} */
  const kept = [];
  for (const each of labels.toSorted((one, other) => one.away - other.away)) {
    const isFree = kept.every(({ label, x }) => Math.abs(x - each.x) > half(label) + half(each.label));
    if (isFree) kept.push(each);
  }
  return kept;
}
