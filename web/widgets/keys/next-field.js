const isInSight = (input) => input.offsetParent && !input.closest("details:not([open])");
const isInput = (/** @type {Element} */ found) => found instanceof HTMLInputElement;
const fields = () => [...document.querySelectorAll('main input[type="text"]')].filter(isInput).filter(isInSight);

/**
 * Go to the field below `input`.
 * @param {HTMLInputElement} input
 * @returns whether there is one
 */
export function goToNext(input) {
  const all = fields();
  const following = all[all.indexOf(input) + 1];
  following?.focus();
  return Boolean(following);
}
