/**
 * A text whose lines never break inside a mixed number (37 at the end of one, 7/16 on the next), nor after a ≈.
 * @param {string} text
 */
export const unbroken = (text) => text.replace(/(\d) (?=\d+\/\d)|(≈) /g, "$1$2\u00a0");
