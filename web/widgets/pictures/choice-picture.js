import { svgElement } from "../element.js";
import { SHAPE } from "./drawing-shapes.js";

/** @import { Drawing } from "../../python/contract.d.ts" */
/** @import { ToScreen } from "./picture.d.ts" */

/** Pixels to an inch of the drawing: the core makes these about an inch wide. */
const SCALE = 64;

/**
 * The small drawing beside the words of a choice, which say the same to who can't see it.
 * @param {Drawing} drawn
 */
export function choicePicture({ box: [left, top, right, bottom], shapes }) {
  /** @type {ToScreen} */
  const place = ([x, y]) => [(x - left) * SCALE, (y - top) * SCALE];
  return svgElement(
    "svg",
    {
      class: "choice-picture",
      viewBox: `0 0 ${(right - left) * SCALE} ${(bottom - top) * SCALE}`,
      "aria-hidden": "true",
    },
    shapes.flatMap((shape) => SHAPE[shape.kind](shape, place, SCALE, null).draw()),
  );
}
