import { button, element } from "../../widgets/element.js";
import { isOffered } from "./offered.js";
import { searchOf } from "./search.js";

/** @import { Reckoner } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

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

  const all = button("All questions", () => {
    box.value = "";
    draw();
    box.focus();
  });
  /** @type {ReturnType<typeof searchOf> | null} */
  let search = null;

  function draw() {
    const { described } = app.state.get();
    const say = (/** @type {string} */ sentence) => element("p", { class: "help" }, sentence);
    if (!described?.reckoners.length) return found.replaceChildren(say("Loading the list…"));
    if (box.value.trim() === "")
      return found.replaceChildren(...bySubject(described.reckoners.filter(isOffered)).flat());
    search ??= searchOf(described);
    const matching = search(box.value);
    if (matching.length) return found.replaceChildren(listed(matching));
    return found.replaceChildren(say("Nothing matches. Try fewer or different words."), all);
  }

  function refresh(/** @type {string[]} */ changed) {
    if (!changed.includes("described")) return;
    search = null;
    draw();
  }

  draw();
  return { node: element("div", { class: "work-out" }, box, found), refresh };
}
