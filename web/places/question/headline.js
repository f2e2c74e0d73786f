/** @import { Length, Reckoning } from "../../python/contract.d.ts" */

/** A list of more than these is told by some of them. */
const MOST_ITEMS = 3;
const SOME = 2;
/** @param {Length[]} items */
function inOneLine(items) {
  const rest = items.length > MOST_ITEMS ? items.length - SOME : 0;
  const told = (rest ? items.slice(0, SOME) : items).map(({ brief }) => brief);
  return [...told, ...(rest ? [`${rest} more`] : [])].join(", ");
}

/** @param {string} text */
const firstSentence = (text) => text.match(/^.*?(?=\. )/)?.[0] ?? text;

/** What a verdict says in parentheses comes beside the answer and is never it, whatever its number.
 * @param {string} text */
const withoutAsides = (text) => text.replace(/ \([^)]*\)/g, "");

/**
 * Whether a verdict has this number, and not only the end of a longer one.
 * @param {string} verdict
 * @param {string} number
 */
const states = (verdict, number) =>
  withoutAsides(verdict)
    .split(withoutAsides(number))
    .slice(0, -1)
    .some((before) => !/\d[ ./]?$/.test(before));

/**
 * Whether a verdict has every number of a list in it, or both ends of a long one.
 * @param {string} verdict
 * @param {Length[]} items
 */
const tells = (verdict, items) =>
  items.length > 0 &&
  (items.length > MOST_ITEMS ? [items[0], items[items.length - 1]] : items).every(({ brief }) =>
    states(verdict, bare(brief)),
  );

/** @param {string} number */
const bare = (number) => number.replace("≈ ", "");

/**
 * An answer in two lines: what leads (the verdict in shop words, or else what the number is), and the number. A verdict
 * that has the number in it, or both ends of a long list, stands alone.
 * @param {Reckoning} answer
 */
export function headline({ answers: [main], verdict }) {
  const text =
    main.kind === "lengths" ? inOneLine(main.items) : "brief" in main ? main.brief : firstSentence(main.text);
  const says = main.kind === "lengths" ? tells(verdict, main.items) : states(verdict, bare(text));
  return says ? { lead: "", text: verdict } : { lead: verdict || main.label, text };
}
