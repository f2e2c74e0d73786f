/**
 * Where the person is led: the address says which place is shown (places.js).
 * @param {string} place
 */
export const go = (place) => {
  location.hash = place;
};

/**
 * The address of a part or step in a line, from that of the line.
 * @param {string} line
 * @param {string} key
 */
export const inLine = (line, key) => `${line}//${encodeURIComponent(key)}`;

let origin = "";

/**
 * Led to a question that is begun for another place: its way back, and what is saved there, lead to that place again.
 * @param {string} place
 * @param {string} from
 */
export function goFrom(place, from) {
  origin = from;
  go(place);
}

/** The place that a question was begun for; "" for none. It is asked for once. */
export function takeOrigin() {
  const from = origin;
  origin = "";
  return from;
}

/** Where an act leads once it is kept, unless the person has gone elsewhere meanwhile. */
export function onward() {
  const from = location.hash;
  return (/** @type {string} */ place) => location.hash === from && go(place);
}
