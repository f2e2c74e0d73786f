import { element } from "../../widgets/element.js";

/** @import { App } from "../place.d.ts" */

/** Letters only, so that "fence's" finds "fence". */
const plain = (text) => text.toLowerCase().replace(/[^a-z0-9 ]/g, "");

/** How many of the words typed begin a word of these texts. */
function found(texts, typed) {
  const own = plain(texts.join(" ")).split(/\s+/);
  return typed.filter((word) => own.some((each) => each.startsWith(word))).length;
}

/** Most of the words first; of two alike, the one whose title has more of them, and little else. */
const score = ({ title, asks, words }, typed) => [
  found([title, asks, ...words], typed),
  found([title], typed) / title.split(" ").length,
];

/** The questions that answer to any of the words typed, the likeliest first. */
function search(questions, typed) {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  if (words.length === 0) return questions;
  const scored = questions.map((question) => [...score(question, words), question]).filter(([all]) => all > 0);
  return scored.sort((one, other) => other[0] - one[0] || other[1] - one[1]).map(([, , question]) => question);
}

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

const listed = (questions) => element("ul", { class: "questions" }, questions.map(link));

/** All questions under their subjects, in the order of the core. */
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
    placeholder: "What do you want to know?",
    autocomplete: "off",
    oninput: draw,
  });

  function draw() {
    const all = app.state.get().described?.reckoners ?? [];
    const matching = search(all, box.value);
    const say = (sentence) => [element("p", { class: "help" }, sentence)];
    if (all.length === 0) found.replaceChildren(...say("The questions appear as soon as the arithmetic has loaded."));
    else if (box.value.trim() === "") found.replaceChildren(...bySubject(all).flat());
    else if (matching.length) found.replaceChildren(listed(matching));
    else found.replaceChildren(...say("No question answers to those words. Try fewer or other words."));
  }

  draw();
  return {
    node: element("div", { class: "work-out" }, box, found),
    refresh: (changed) => changed.includes("described") && draw(),
  };
}
