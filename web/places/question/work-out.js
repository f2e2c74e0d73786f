import { element } from "../../widgets/element.js";

/** @import { Reckoner } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * Letters only, so that "fence's" finds "fence".
 * @param {string} text
 */
const plain = (text) => text.toLowerCase().replace(/[^a-z0-9 ]/g, "");

/**
 * How many of the words typed begin a word of these texts.
 * @param {string[]} texts
 * @param {string[]} typed
 */
function found(texts, typed) {
  const own = plain(texts.join(" ")).split(/\s+/);
  return typed.filter((word) => own.some((each) => each.startsWith(word))).length;
}

/**
 * Most of the words first; of two alike, the one whose title has more of them, and little else.
 * @param {Reckoner} question
 * @param {string[]} typed
 */
const score = ({ title, asks, words }, typed) => [
  found([title, asks, ...words], typed),
  found([title], typed) / title.split(" ").length,
];

/**
 * The questions that answer to any of the words typed, the likeliest first.
 * @param {Reckoner[]} questions
 * @param {string} typed
 */
function search(questions, typed) {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  if (words.length === 0) return questions;
  const scored = questions.map((question) => ({ question, by: score(question, words) }));
  return scored
    .filter(({ by: [all] }) => all > 0)
    .sort((one, other) => other.by[0] - one.by[0] || other.by[1] - one.by[1])
    .map(({ question }) => question);
}

/** @param {Reckoner} question */
const link = (question) =>
  element(
    "li",
    {},
    element(
      "a",
      { class: "question-link", href: `#work-out/${question.key}` },
      element("strong", {}, question.title),
      element("span", {}, question.asks),
    ),
  );

/** @param {Reckoner[]} questions */
const listed = (questions) => element("ul", { class: "questions" }, questions.map(link));

/**
 * All questions under their subjects, in the order of the core.
 * @param {Reckoner[]} questions
 */
function bySubject(questions) {
  const subjects = [...new Set(questions.map((each) => each.subject))];
  return subjects.map((subject) => [
    element("h2", { class: "subject" }, subject),
    listed(questions.filter((each) => each.subject === subject)),
  ]);
}

/**
 * The questions, found by the words a person would use.
 * @param {App} app
 */
export function workOut(app) {
  const found = element("div", { class: "found" });
  const box = element("input", {
    type: "search",
    class: "search",
    "aria-label": "Find a question",
    placeholder: "What do you need to figure?",
    autocomplete: "off",
    oninput: draw,
  });

  function draw() {
    const all = app.state.get().described?.reckoners ?? [];
    const matching = search(all, box.value);
    const say = (/** @type {string} */ sentence) => [element("p", { class: "help" }, sentence)];
    if (all.length === 0) found.replaceChildren(...say("Loading the list…"));
    else if (box.value.trim() === "") found.replaceChildren(...bySubject(all).flat());
    else if (matching.length) found.replaceChildren(listed(matching));
    else found.replaceChildren(...say("Nothing matches. Try fewer or different words."));
  }

  draw();
  return {
    node: element("div", { class: "work-out" }, box, found),
    refresh: (/** @type {string[]} */ changed) => changed.includes("described") && draw(),
  };
}
