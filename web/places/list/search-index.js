/** What a question is found by: its title, its words, what means the same as they do, and the sentence it answers. */

import { stem, wordsOf } from "./search-words.js";

/** @import { Reckoner } from "../../python/contract.d.ts" */
/** @typedef {{raw: string, stem: string}} Word */
/** @typedef {"title" | "words" | "asks"} Where */
/** @typedef {{words: Word[], where: Where, rank: number, whole: boolean}} Phrase `whole`: it counts if all of it is typed */
/** @typedef {{question: Reckoner, phrases: Phrase[]}} Indexed */

/** The rank of what is in no word of a question's own. */
const LAST = 99;

/** @param {string} text */
export const read = (text) => wordsOf(text).map((raw) => ({ raw, stem: stem(raw) }));

/** @param {Word[]} words */
export const joined = (words) => words.map((word) => word.stem).join(" ");

/**
 * @param {Reckoner[]} questions
 * @param {string[][]} same phrases of one meaning
 * @returns {Indexed[]}
 */
export function indexed(questions, same) {
  const meanings = same.map((group) => group.map(read));
  /** @param {Word[]} words */
  const inOtherWords = (words) => {
    const own = ` ${joined(words)} `;
    return meanings.filter((group) => group.some((each) => own.includes(` ${joined(each)} `))).flat();
  };
  /** @type {(text: string, where: Where, rank?: number) => Phrase[]} */
  const phrases = (text, where, rank = LAST) => {
    const own = { words: read(text), where, rank, whole: false };
    const others = where === "asks" ? [] : inOtherWords(own.words);
    return [
      own,
      ...others.map((words) => ({ ...own, words, where: /** @type {Where} */ ("words"), whole: words.length > 1 })),
    ];
  };
  return questions.map((question) => ({
    question,
    phrases: [
      ...phrases(question.title, "title"),
      ...question.words.flatMap((text, rank) => phrases(text, "words", rank)),
      ...phrases(question.asks, "asks"),
    ],
  }));
}

/**
 * The questions without what means the same in phrases of which not all is typed: no "board" finds a baseboard.
 * @param {Indexed[]} all
 * @param {Word[]} typed
 */
export function asTyped(all, typed) {
  const isTyped = (/** @type {Word} */ word) => typed.some((each) => each.stem === word.stem);
  return all.map(({ question, phrases }) => ({
    question,
    phrases: phrases.filter(({ words, whole }) => !whole || words.every(isTyped)),
  }));
}
