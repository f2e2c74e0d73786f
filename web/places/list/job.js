import { element } from "../../widgets/element.js";
import { arriving } from "../forms/instead.js";
import { isOffered } from "./offered.js";
import { questionRows } from "./question-rows.js";
import { noteLeaving, returnTo } from "./where-one-was.js";

/** @import { App, Place } from "../place.d.ts" */

/**
 * The questions for one job.
 * @param {App} app
 * @param {string} key of the job
 * @returns {Place}
 */
export function job(app, key) {
  const { described } = app.state.get();
  if (!described) return arriving("Loading the list…", () => job(app, key));
  const found = described.jobs.find((each) => each.key === key);
  const offered = described.reckoners.filter(isOffered);
  const questions = offered.filter((each) => each.job === found?.key);
  const node = element(
    "div",
    { class: "job" },
    element("a", { class: "back", href: "#work-out" }, "‹ All questions"),
    found ? element("h2", {}, found.title) : null,
    found
      ? questionRows(app, questions)
      : element("p", { class: "help" }, "There’s nothing at this address. Pick from the list."),
  );
  noteLeaving(node);
  return { node, land: () => returnTo(node), title: () => found?.title ?? "" };
}
