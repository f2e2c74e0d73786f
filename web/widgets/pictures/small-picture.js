import { svgElement } from "../element.js";

/** @import { Picture } from "../../python/contract.d.ts" */

/** What is filled first, what is drawn over it. */
const LAYERS = /** @type {const} */ (["wood", "ink", "chalk"]);

/**
 * The small picture of a job or a question; it says nothing that the words beside it do not.
 * @param {Picture} picture
 */
export const smallPicture = (picture) =>
  svgElement(
    "svg",
    { class: "small-picture", viewBox: "0 0 40 40", "aria-hidden": "true" },
    LAYERS.map((layer) =>
      picture[layer] ? svgElement("path", { class: `picture-${layer}`, d: picture[layer] }) : null,
    ),
  );
