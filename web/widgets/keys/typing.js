/** Writing into a field at its caret, as if typed. */

/**
 * What is selected; where the caret stands, both ends are one.
 * @param {HTMLInputElement} input
 */
const selected = ({ selectionStart, selectionEnd, value }) => ({
  start: selectionStart ?? value.length,
  end: selectionEnd ?? value.length,
});

/**
 * @param {HTMLInputElement} input
 * @param {number} from
 * @param {number} to
 * @param {string} text
 */
function replace(input, from, to, text) {
  input.setRangeText(text, from, to, "end");
  // A field without the focus does not follow its caret by itself.
  if (input.selectionEnd === input.value.length) input.scrollLeft = input.scrollWidth;
  input.dispatchEvent(new Event("input", { bubbles: true }));
}

/** The signs that go on from a number. */
export const SIGNS = ["+", "−", "×", "÷"];

/**
 * Write `text` at the caret, in the place of what is selected; a sign goes on from a whole number.
 * @param {HTMLInputElement} input
 * @param {string} text
 */
export function write(input, text) {
  const { start, end } = selected(input);
  const goesOn = start === 0 && end === input.value.length && SIGNS.includes(text.trim());
  replace(input, goesOn ? end : start, end, text);
}

/**
 * Write `text` in the place of all that the field holds.
 * @param {HTMLInputElement} input
 * @param {string} text
 */
export function replaceAll(input, text) {
  replace(input, 0, input.value.length, text);
}

/**
 * What one touch wrote, one touch takes back: a name in its brackets, right before the caret. This finds no names, which
 * the core alone does (pycore/sawside/lengths/reading/uses.py): whatever stands in the brackets, they go as one.
 */
const BRACKETS_AT_END = /\[[^[\]]*\]$/;
/**
 * Take back what is selected, or the last thing before the caret: one of `signs`, or a name in brackets.
 * @param {HTMLInputElement} input
 * @param {string[]} signs
 */
export function backspace(input, signs) {
  const { start, end } = selected(input);
  if (start !== end) return replace(input, start, end, "");
  const before = input.value.slice(0, start);
  const sign = before.match(BRACKETS_AT_END)?.[0] ?? signs.find((each) => each && before.endsWith(each));
  return replace(input, Math.max(0, start - (sign ? sign.length : 1)), start, "");
}

/**
 * Put a mark behind the whole number before the caret.
 * @param {HTMLInputElement} input
 * @param {{text: string, separator: string, instead: string}} mark `instead` is what it takes the place of, right
 *   before the caret
 * @returns {string} what was written
 */
export function writeMark(input, { text, separator, instead }) {
  const { start, end } = selected(input);
  const kept = input.value.slice(0, start - instead.length);
  const written = text && /\d$/.test(kept) ? separator + text : text;
  replace(input, kept.length, end, written);
  return written;
}

/**
 * What stands before the caret.
 * @param {HTMLInputElement} input
 */
export const beforeCaret = (input) => input.value.slice(0, selected(input).start);
