/** @import { Drawing } from "../../python/contract.d.ts" */

/**
 * A drawing in which what is drawn of one part is lit up.
 * @param {Drawing} drawn
 * @param {{part: string, name: string}} lit
 * @returns {Drawing}
 */
export const litIn = (drawn, { part, name }) => ({
  ...drawn,
  words: `${drawn.words} Highlighted: ${name}.`,
  shapes: drawn.shapes.map((shape) =>
    shape.kind === "polygon" && shape.part === part ? { ...shape, role: "lit" } : shape,
  ),
});
