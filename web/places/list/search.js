/**
 * Finds questions by a person's own words. A question must answer to every word that means something, or, where none
 * does and each word is known to some question, to all but one of three or more.
 */

import { isOffered } from "./offered.js";
import { asTyped, indexed, joined, read } from "./search-index.js";
import { isSlip, stem } from "./search-words.js";

/** @import { Described, Reckoner } from "../../python/contract.d.ts" */
/** @import { Indexed, Phrase, Where, Word } from "./search-index.js" */

/** What a word counts that is found whole, as a beginning, or with a slip. */
const WHOLE = { title: 60, words: 40, asks: 20 };
const BEGUN = { title: 30, words: 15, asks: 8 };
const SLIP = { title: 10, words: 6, asks: 3 };
const SMALL = { title: 3, words: 2, asks: 1 };
/** What each word counts beside where all that is typed is a phrase of the question. */
const PHRASE = 30;
/** Shorter ones are often whole words of their own: "LP", "OC", "ply". */
const BEGINS = 4;
/** So many words may have one too many: "picture frame corner". */
const MANY = 3;
const SLIPS = 5;
/** An older version of the core, which the page remembers while the new one starts, says nothing of it. */
const NOTHING_SAID = { same: [], small: [], elsewhere: [] };

/**
 * How a word that was typed can be found: in a word of a question, whole or begun, or else with a slip.
 * @param {Word} typed
 * @param {boolean} last still being typed
 * @param {Phrase[]} all every phrase but the sentences that questions answer
 * @param {string[]} elsewhere stems of words that are no slips of others
 * @returns {(word: Word) => Record<Where, number> | null} what it counts in a word of a question
 */
function finder(typed, last, all, elsewhere) {
  const isWhole = (/** @type {Word} */ word) => word.stem === typed.stem;
  const begins = (/** @type {Word} */ word) => word.raw.startsWith(typed.raw);
  const isNear = (/** @type {Word} */ word) =>
    word.raw.length >= SLIPS &&
    [typed.raw, typed.stem].some((one) => [word.raw, word.stem].some((other) => isSlip(one, other)));
  const somewhere = (/** @type {(word: Word) => boolean} */ test) => all.some(({ words }) => words.some(test));

  const isThere = somewhere(isWhole);
  const mayBegin = /[a-z]/.test(typed.raw) && (typed.raw.length >= BEGINS || (last && !isThere));
  const isKnown = isThere || (mayBegin && somewhere(begins)) || elsewhere.includes(typed.stem);
  return (word) => {
    if (isWhole(word)) return WHOLE;
    if (mayBegin && begins(word)) return BEGUN;
    return !isKnown && typed.raw.length >= BEGINS && isNear(word) ? SLIP : null;
  };
}

/**
 * What a question counts for a word, where best it is found, and how early among its own words; null where it lacks it.
 * @param {Indexed} indexed
 * @param {ReturnType<typeof finder>} counts
 */
function best({ phrases }, counts) {
  const found = phrases.flatMap(({ words, where, rank }) =>
    words.map((word) => ({ count: counts(word)?.[where] ?? 0, where, rank })),
  );
  const count = Math.max(...found.map((each) => each.count));
  if (count === 0) return null;
  const rank = Math.min(...found.filter((each) => each.count > 0).map((each) => each.rank));
  return { count, rank, isToldByItself: found.some((each) => each.count > 0 && each.where !== "asks") };
}

/**
 * How well a question answers to what was typed; null where it lacks a word of it.
 * @param {Indexed} indexed
 * @param {{needed: ReturnType<typeof finder>[], small: Word[], phrase: string}} typed
 */
function score(indexed, { needed, small, phrase }) {
  const found = needed.map((counts) => best(indexed, counts));
  if (found.some((each) => each === null)) return null;
  const told = found.flatMap((each) => each ?? []);
  if (!told.some((each) => each.isToldByItself)) return null;
  const extra = small.flatMap((typed) => best(indexed, (word) => (word.stem === typed.stem ? SMALL : null)) ?? []);
  const asDeclared = phrase.includes(" ") && indexed.phrases.some(({ words }) => joined(words) === phrase);
  const count = [...told, ...extra].reduce(
    (all, each) => all + each.count,
    asDeclared ? PHRASE * phrase.split(" ").length : 0,
  );
  const [title] = indexed.phrases;
  const share = told.filter((each) => each.count === WHOLE.title).length / title.words.length;
  return { question: indexed.question, count, rank: told.reduce((all, each) => all + each.rank, 0), share };
}

/**
 * A search among the questions that are described.
 * @param {Pick<Described, "reckoners" | "search">} described
 * @returns {(typed: string) => Reckoner[]} the questions that answer to what is typed, the likeliest first
 */
export function searchOf({ reckoners, search: { same, small, elsewhere } = NOTHING_SAID }) {
  const described = indexed(reckoners.filter(isOffered), same);
  const notSlips = elsewhere.map(stem);
  const isSmall = (/** @type {Word} */ word) => small.includes(word.raw);

  return (typed) => {
    const words = read(typed);
    const all = asTyped(described, words);
    const named = all.flatMap(({ phrases }) => phrases.filter(({ where }) => where !== "asks"));
    /** @param {Word[]} needed */
    const scoredBy = (needed) => {
      const asked = {
        needed: needed.map((word) => finder(word, word === words[words.length - 1], named, notSlips)),
        small: words.filter((word) => isSmall(word) && !needed.includes(word)),
        phrase: joined(words.filter((word) => isSmall(word) || needed.includes(word))),
      };
      return all.flatMap((each) => score(each, asked) ?? []);
    };
    /** @param {ReturnType<typeof scoredBy>} scored */
    const inOrder = (scored) => [
      ...new Set(
        scored
          .sort((one, other) => other.count - one.count || one.rank - other.rank || other.share - one.share)
          .map(({ question }) => question),
      ),
    ];
    /** @param {Word[]} needed */
    const foundBy = (needed) => inOrder(scoredBy(needed));
    /** @param {Word[]} needed */
    const foundByAllButOne = (needed) => {
      if (needed.length < MANY || !needed.every((word) => scoredBy([word]).length)) return [];
      return inOrder(needed.flatMap((word) => scoredBy(needed.filter((each) => each !== word))));
    };
    const meaning = words.filter((word) => !isSmall(word));
    const found = foundBy(meaning.length ? meaning : words);
    // The numbers of a job are in no question: "divide by 7".
    const withoutNumbers = meaning.filter((word) => /[a-z]/.test(word.raw));
    if (found.length || !withoutNumbers.length) return found;
    const byWords = foundBy(withoutNumbers);
    return byWords.length ? byWords : foundByAllButOne(withoutNumbers);
  };
}
