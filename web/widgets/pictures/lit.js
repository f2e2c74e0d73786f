/** @import { Drawing, Shape } from "../../python/contract.d.ts" */

/**
 * A drawing in which what is drawn of one part is lit up, over all that is beside it.
 * @param {Drawing} drawn
 * @param {{part: string, name: string}} lit
 * @returns {Drawing}
 */
export function litIn(drawn, { part, name }) {
  const isLit = (/** @type {Shape} */ shape) => shape.kind === "polygon" && shape.part === part;
  const lit = drawn.shapes.filter(isLit).map((shape) => ({ ...shape, role: "lit" }));
  const words = lit.length ? `${drawn.words} Highlighted: ${name}.` : drawn.words;
  return { ...drawn, words, shapes: [...drawn.shapes.filter((shape) => !isLit(shape)), ...lit] };
}
