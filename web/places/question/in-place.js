/**
 * Does what changes how high the rows of a question are, and leaves what was touched among its fields where it is on the
 * screen. What fills them in shows them from the top.
 * @param {HTMLElement} node of that question
 * @param {() => void} change
 */
export function inPlace(node, change) {
  const place = node.closest("main");
  const held = place?.contains(document.activeElement) ? document.activeElement : null;
  const before = held?.getBoundingClientRect().top ?? 0;
  change();
  if (place && held?.matches(".form :is(input, button)")) place.scrollTop += held.getBoundingClientRect().top - before;
}
