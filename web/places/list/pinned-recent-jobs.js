import { element, present } from "../../widgets/element.js";
import { smallPicture } from "../../widgets/pictures/small-picture.js";
import { isOffered } from "./offered.js";
import { questionLink } from "./question-rows.js";

/** @import { Described, Job, Reckoner } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

const MOST_RECENT = 4;

/**
 * How many questions, in words.
 * @param {number} count
 */
export const countOf = (count) => `${count} ${count === 1 ? "question" : "questions"}`;

/**
 * The way to the questions of a job; how many they are is only heard.
 * @param {Job} job
 * @param {Reckoner[]} all
 */
function tile({ key, title, picture }, all) {
  const label = `${title}, ${countOf(all.filter(({ job }) => job === key).length)}`;
  return element(
    "a",
    { class: "tile", href: `#questions/${encodeURIComponent(key)}`, "aria-label": label },
    smallPicture(picture),
    title,
  );
}

/**
 * @param {string} heading
 * @param {HTMLElement[]} links
 */
const section = (heading, links) => [
  element("h2", { class: "list-heading" }, heading),
  element(
    "ul",
    { class: "tiles" },
    links.map((link) => element("li", {}, link)),
  ),
];

/**
 * The list before anything is searched for: what is pinned, what was answered last, and the jobs.
 * @param {App} app
 * @param {Described} described
 */
export function atRest(app, { jobs, reckoners: all }) {
  const reckoners = all.filter(isOffered);
  const { pinned, recent } = app.state.get();
  // Of a question that is no more only its key is left.
  const known = (/** @type {string[]} */ keys) =>
    present(keys.map((key) => reckoners.find((each) => each.key === key)));
  const atTop = known(pinned);
  const last = known(recent.filter((key) => !pinned.includes(key))).slice(0, MOST_RECENT);
  return [
    ...(atTop.length ? section("Pinned", atTop.map(questionLink)) : []),
    ...(last.length ? section("Recent", last.map(questionLink)) : []),
    ...section(
      "By job",
      jobs.map((job) => tile(job, reckoners)),
    ),
  ];
}
