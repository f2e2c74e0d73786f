/** @import { Length, Reckoning } from "../../python/contract.d.ts" */

const MOST_ITEMS = 3;
/** @param {Length[]} items */
const inOneLine = (items) =>
  items.length > MOST_ITEMS ? `${items.length} lengths` : items.map(({ brief }) => brief).join(", ");

/** @param {string} text */
const firstSentence = (text) => text.match(/^.*?(?=\. )/)?.[0] ?? text;

/**
 * An answer in two lines: what leads (the verdict in shop words, or else what the number is), and the number. A verdict
 * that has the number in it stands alone.
 * @param {Reckoning} answer
 */
export function headline({ answers: [main], verdict }) {
  const text =
    main.kind === "lengths" ? inOneLine(main.items) : "brief" in main ? main.brief : firstSentence(main.text);
  const number = text.replace("≈ ", "");
  return verdict.includes(number) ? { lead: "", text: verdict } : { lead: verdict || main.label, text };
}
