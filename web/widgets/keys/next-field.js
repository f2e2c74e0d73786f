const isInSight = (input) => input.offsetParent && !input.closest("details:not([open])");
const fields = () => [...document.querySelectorAll('main input[type="text"]')].filter(isInSight);

/** Go to the field below `input`. @returns whether there is one */
export function goToNext(input) {
  const all = fields();
  const following = all[all.indexOf(input) + 1];
  following?.focus();
  return Boolean(following);
}
