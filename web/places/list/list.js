import { button, element } from "../../widgets/element.js";
import { atRest, countOf } from "./pinned-recent-jobs.js";
import { questionRows } from "./question-rows.js";
import { searchOf } from "./search.js";
import { noteLeaving, noteSearch, returnTo, searchedFor } from "./where-one-was.js";

/** @import { Described } from "../../python/contract.d.ts" */
/** @import { App, Place } from "../place.d.ts" */

/**
 * The questions, found by the words a person would use, or by what they are for.
 * @param {App} app
 * @returns {Place}
 */
export function list(app) {
  const found = element("div", { class: "found" });
  const count = element("p", { class: "heard", role: "status" });
  const box = element("input", {
    type: "search",
    class: "search",
    "aria-label": "Find a question",
    placeholder: "What do you need to figure?",
    autocomplete: "off",
    value: searchedFor(),
    oninput: () => {
      noteSearch(box.value);
      draw();
    },
  });
  const node = element("div", { class: "work-out" }, box, count, found);
  /** @type {ReturnType<typeof searchOf> | null} */
  let search = null;

  function draw() {
    const { described } = app.state.get();
    count.textContent = "";
    // An older version of the core, which the page remembers while the new one starts, knows no jobs.
    if (!described?.jobs?.length) found.replaceChildren(say("Loading the list…"));
    else if (box.value.trim() === "") found.replaceChildren(...atRest(app, described));
    else showFound(described);
  }

  /** @param {Described} described */
  function showFound(described) {
    search ??= searchOf(described);
    const matching = search(box.value);
    count.textContent = countOf(matching.length);
    if (matching.length) found.replaceChildren(questionRows(app, matching));
    else found.replaceChildren(say("Nothing matches. Try fewer or different words."), button("All questions", clear));
  }

  function clear() {
    box.value = "";
    noteSearch("");
    draw();
    box.focus();
  }

  function refresh(/** @type {string[]} */ changed) {
    if (!changed.includes("described")) return;
    search = null;
    draw();
  }

  noteLeaving(found);
  draw();
  return { node, refresh, land: () => returnTo(found) };
}

/** @param {string} sentence */
const say = (sentence) => element("p", { class: "help" }, sentence);
