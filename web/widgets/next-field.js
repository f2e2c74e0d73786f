const fields = () => [...document.querySelectorAll('main input[type="text"]')].filter((each) => each.offsetParent);

/** Go to the field below `input`. @returns whether there is one */
export function goToNext(input) {
  const all = fields();
  const following = all[all.indexOf(input) + 1];
  following?.focus();
  return Boolean(following);
}
