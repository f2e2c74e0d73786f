/**
 * Where the person is led: the address says which place is shown (places.js).
 * @param {string} place
 */
export const go = (place) => {
  location.hash = place;
};

/** Where an act leads once it is kept, unless the person has gone elsewhere meanwhile. */
export function onward() {
  const from = location.hash;
  return (/** @type {string} */ place) => location.hash === from && go(place);
}
