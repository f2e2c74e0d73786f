const isInSight = (input) => input.offsetParent && !input.closest("details:not([open])");
const isInput = (/** @type {Element} */ found) => found instanceof HTMLInputElement;
const TYPED_INTO = 'main :is(input[type="text"], input[type="datetime-local"])';
const fields = () => [...document.querySelectorAll(TYPED_INTO)].filter(isInput).filter(isInSight);

/**
 * Go to the field below `input`, unless what it stands in hears "go-next" and goes on by itself, as a list that adds a row.
 * @param {HTMLInputElement} input
 * @returns whether there is one
 */
export function goToNext(input) {
  const all = fields();
  const following = all[all.indexOf(input) + 1];
  if (!input.dispatchEvent(new Event("go-next", { bubbles: true, cancelable: true }))) return true;
  following?.focus();
  return Boolean(following);
}
