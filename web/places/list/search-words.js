/**
 * The words of a text, in small letters: "Toe-kick" is two, "1 x 4" one, "32mm" two, "o.c." one.
 * @param {string} text
 */
export const wordsOf = (text) =>
  text
    .toLowerCase()
    .normalize("NFKD")
    .replaceAll("⁄", "/")
    .replace(/['’]|\p{M}|(?<!\d)\.|\.(?!\d)/gu, "")
    .replace(/(\d)[\s-]*(?:x|×|by)[\s-]*(?=\d)/g, "$1x")
    .replace(/(\d)(mm|cm|in|ft)\b/g, "$1 $2")
    .replace(/(?<!\d)\/|\/(?!\d)|[^a-z0-9./]/g, " ")
    .split(" ")
    .filter(Boolean);

/** What each ending of a word is to be for all its forms to be alike; only the first that fits. */
const ENDINGS = /** @type {[RegExp, string][]} */ ([
  [/(..)lves$/, "$1lf"],
  [/(..)ies$/, "$1y"],
  [/(..)oes$/, "$1o"],
  [/(..(?:ch|sh|ss|x|z))es$/, "$1"],
  [/(..[^sui])s$/, "$1"],
]);
const FORMS = /^(.{4,})(?:ing|ed|ly)$/;
const TWICE = /([^aeiouls])\1$/;

/**
 * A word as all its forms have it: "shelves", "mitered" and "spacing" as "shelf", "miter" and "space".
 * @param {string} word
 */
export function stem(word) {
  const [ending, instead] = ENDINGS.find(([each]) => each.test(word)) ?? [/$/, ""];
  const one = word.replace(ending, instead);
  const bare = FORMS.test(one) ? one.replace(FORMS, "$1").replace(TWICE, "$1") : one;
  return bare.length > 4 ? bare.replace(/e$/, "") : bare;
}

/**
 * Whether one letter that is wrong, missing, too many, or two that changed places, make one word of the other.
 * @param {string} typed
 * @param {string} meant
 */
export function isSlip(typed, meant) {
  let same = 0;
  while (same < typed.length && typed[same] === meant[same]) same += 1;
  const [left, right] = [typed.slice(same), meant.slice(same)];
  const swapped = `${left[1] ?? ""}${left[0] ?? ""}${left.slice(2)}`;
  return [left.slice(1) === right.slice(1), left === right.slice(1), left.slice(1) === right, swapped === right].some(
    Boolean,
  );
}
