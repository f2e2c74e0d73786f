import { element, svgElement } from "../element.js";

/** @import { Circle, Label, Sheet, StraightLine } from "../../python/contract.d.ts" */

/**
 * A sheet of the core at true size: its millimeters are the units of the drawing, nothing is scaled.
 * @param {Sheet} sheet
 */
function sheetOfPaper(sheet) {
  const { width, height, words, shapes } = sheet;
  return element(
    "li",
    { class: "sheet-of-paper" },
    svgElement(
      "svg",
      {
        width: `${width}mm`,
        height: `${height}mm`,
        viewBox: `0 0 ${width} ${height}`,
        role: "img",
        "aria-label": words,
      },
      shapes.map((shape) => SHAPE[shape.kind](shape)),
    ),
  );
}

/** @type {Record<string, (shape: any) => SVGElement>} `any` is a shape of that kind */
const SHAPE = {
  line: (/** @type {StraightLine} */ { from, to, role }) =>
    svgElement("line", { class: `ink ink-${role}`, x1: from[0], y1: from[1], x2: to[0], y2: to[1] }),
  circle: (/** @type {Circle} */ { center, radius, role }) =>
    svgElement("circle", { class: `ink ink-${role}`, cx: center[0], cy: center[1], r: radius }),
  label: (/** @type {Label} */ { at, text, role, align }) =>
    svgElement(
      "text",
      { class: `printed printed-${role}`, x: at[0], y: at[1], "text-anchor": align, "dominant-baseline": "central" },
      text,
    ),
};

/**
 * Sheets for one kind of paper, each of which fills a page when it is printed.
 * @param {Sheet[]} sheets
 * @param {string} paper
 */
export const sheetsOfPaper = (sheets, paper) =>
  element("ol", { class: `sheets on-${paper}`, "aria-label": "Sheets" }, sheets.map(sheetOfPaper));
