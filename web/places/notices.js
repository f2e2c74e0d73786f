import { byId } from "../widgets/element.js";
import { notice as say, unsay as unsaid } from "../widgets/messages/notice.js";

/** @import { Action, Wrong } from "../widgets/widget.d.ts" */

/** @typedef {{ok: true, said?: string} | {ok: false, error: Wrong}} Answer of the core, or of the page */

/**
 * Say a sentence above the place, with one thing that can be done about it (widgets/messages/notice.js).
 * @param {string} sentence
 * @param {Action | null} [action]
 */
export const notice = (sentence, action) => say(byId("notices"), byId("place"), sentence, action);

/**
 * What was said of the last act is of no use once the place itself shows the next; nor is what of a `kind` is true no more.
 * @param {string} [kind]
 */
export const unsay = (kind) => unsaid(byId("notices"), byId("place"), kind);

/**
 * An error of the core in one text: what is wrong, and what to do about it.
 * @param {Wrong} error
 */
export const inWords = ({ message, remedy }) => `${message} ${remedy ?? ""}`;

/**
 * Say what went wrong; when all went well the place itself shows it.
 * @template {Answer} Given
 * @param {Promise<Given>} doing
 */
export async function quietly(doing) {
  const answer = await doing;
  if (!answer.ok) notice(inWords(answer.error));
  return answer;
}

/**
 * Say what came of it, good or bad.
 * @template {Answer} Given
 * @param {Promise<Given>} doing
 */
export async function aloud(doing) {
  const answer = await doing;
  notice(answer.ok ? (answer.said ?? "") : inWords(answer.error));
  return answer;
}

/**
 * @param {string} text
 * @param {string} [what] what it is, where it is too long to be said
 */
export async function copy(text, what = "") {
  try {
    await navigator.clipboard.writeText(text);
    notice(`Copied ${what || text}`);
  } catch {
    // Refused, or, as on a page without HTTPS, not there at all.
    notice(`This browser won’t let Sawside copy. Select ${what || "the number"} and copy it yourself.`);
  }
}
