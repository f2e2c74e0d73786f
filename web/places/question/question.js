import { entryOf } from "../../store/project/identity.js";
import { element } from "../../widgets/element.js";
import { arriving, notThere } from "../forms/instead.js";
import { firstBlank } from "../forms/to-fill.js";
import { takeOrigin } from "../go.js";
import { isOffered } from "../list/offered.js";
import { pinButton } from "../list/pin.js";
import { questionAsked } from "./question-asked.js";

/** @import { App, Place } from "../place.d.ts" */

const ALL = "All questions";
const ARRIVING = "Loading the question…";

/**
 * One question, drawn from its declaration; with `entryId`, a kept line being corrected; with `of`, what was begun from
 * another entry; with `part`, the part of it whose row is gone to.
 * @param {App} app
 * @param {string} key
 * @param {{entryId?: string, of?: string, part?: string}} named
 * @returns {Place}
 */
export function question(app, key, named) {
  const { entryId, of, part } = named;
  const { described, record } = app.state.get();
  const declared = described?.reckoners.find((each) => each.key === key);
  if (!declared) return described ? noQuestion() : arriving(ARRIVING, () => question(app, key, named));
  const line = entryOf(record, "line", entryId);
  const entry = line?.reckoner === key ? line : undefined;
  if (entryId && !entry) return notThere("This line isn’t in the project.");
  const from = takeOrigin();
  const asked = questionAsked(app, { declared, entry, of, from });
  const hasOwnName = entry && entry.name.toLowerCase() !== declared.title.toLowerCase();
  const title = hasOwnName ? `${declared.title}: ${entry.name}` : declared.title;
  const isFromProject = entry || of || !isOffered(declared);
  const back = backOf(from, Boolean(isFromProject));
  const node = element(
    "div",
    { class: "question asked" },
    element(
      "div",
      { class: "asked-head" },
      element("a", { class: "back", href: back.href, "aria-label": `‹ ${back.label}` }, "‹"),
      element("h2", {}, title),
    ),
    asked.nodes,
    // At the end of the title on the screen, behind all else for who walks with the keyboard.
    isFromProject ? null : pinButton(app, declared),
  );
  const land = () => {
    if (part) {
      asked.goToPart(part);
      return;
    }
    const blank = entry ? firstBlank(app.state.get(), entry.id) : "";
    if (blank) asked.open(blank);
  };
  return { node, title: () => title, refresh: asked.refresh, land };
}

/**
 * @param {string} from the place that it was begun for
 * @param {boolean} isFromProject
 */
function backOf(from, isFromProject) {
  if (from) return { href: `#${from}`, label: "Back" };
  return isFromProject ? { href: "#project", label: "Project" } : { href: "#work-out", label: ALL };
}

const noQuestion = () => ({
  node: element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#work-out" }, `‹ ${ALL}`),
    element("p", { class: "help" }, "There’s no question at this address. Pick one from the list."),
  ),
});
