const UNITS = "in|ft|yd|mm|cm|m|lb|kg|psi|kPa|MPa|GPa|kN|N";
const JOINED = new RegExp(`(\\d) (?=\\d+/\\d|(?:${UNITS})(?![\\w’]))|(≈) `, "g");

/**
 * A text whose lines never break inside a mixed number (37 at the end of one, 7/16 on the next), nor between a number and
 * its unit, nor after a ≈.
 * @param {string} text
 */
export const unbroken = (text) => text.replace(JOINED, "$1$2\u00a0");

/**
 * What is said, one sentence after another; "" is nothing.
 * @param {string[]} said with or without their periods
 */
export const sentences = (said) =>
  said
    .filter(Boolean)
    .map((each) => (/[.!?…]$/.test(each) ? each : `${each}.`))
    .join(" ");
