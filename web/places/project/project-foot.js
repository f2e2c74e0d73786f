import { button, element, present } from "../../widgets/element.js";
import { go, onward } from "../go.js";
import { addCase, newCase } from "./new-case.js";
import { sampleCase } from "./sample-case.js";

/** @import { Logged, Stock } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * Below the entries: a note, the backup with its reminder, and the log of what was done.
 * @param {App} app
 */
export function projectFoot(app) {
  const { record, view, backups } = app.state.get();
  const addPiece = button("Add a piece", () => go("work-out/piece_by_hand"));
  if (!record)
    return element(
      "div",
      { class: "button-row" },
      newCase(app, { class: "button primary" }),
      sampleCase(app),
      addPiece,
      button("Restore a backup", () => go("restore")),
    );
  const since = record.revision - (backups[record.id]?.revision ?? 0);
  return element(
    "div",
    { class: "project-foot" },
    element(
      "div",
      { class: "button-row" },
      button("Add a reading", () => go("new-reading")),
      addPiece,
      button("Add a note", () => go("note")),
      addCase(app),
      view?.pieces.some(({ width }) => width) ? partsToFinish(app) : null,
    ),
    since > 0 ? element("p", { class: "help" }, reminder(since, backups[record.id])) : null,
    view?.tally?.length ? materialTally(view.tally) : null,
    view?.log?.length ? log(view.log) : null,
  );
}

/**
 * Lists the parts of the project, both faces of each, for how much finish they take, and leads to that line.
 * @param {App} app
 */
function partsToFinish(app) {
  async function list() {
    const goOn = onward();
    const answer = await app.project.change({ act: "finish_parts" });
    if (answer.ok && answer.id) goOn(`project/${answer.id}`);
  }
  return button("How much finish", list);
}

/**
 * A phone can be lost: said quietly, where it does not stand in the way.
 * @param {number} since
 * @param {object | undefined} backup
 */
const reminder = (since, backup) =>
  backup
    ? `${since} ${since === 1 ? "change" : "changes"} since the last backup.`
    : "Not backed up. This project is only on this device.";

/** @param {Logged[]} lines */
const log = (lines) =>
  element(
    "details",
    { class: "working log" },
    element("summary", {}, "Change log"),
    element(
      "ol",
      {},
      lines.map(({ when, said }) =>
        element("li", {}, when ? element("time", { datetime: when }, when.replace("T", " ")) : null, said),
      ),
    ),
  );

/**
 * How much of each material and size the project takes, spoiled pieces counted.
 * @param {Stock[]} tally
 */
function materialTally(tally) {
  return element(
    "details",
    { class: "working" },
    element("summary", {}, "Material"),
    element("ul", {}, tally.map(row)),
  );
}

/** @param {Stock} stock */
function row({ material, width, thickness, count, length, rough, spoiled, spoiled_length: wasted }) {
  const size = present([width, thickness]).map(({ brief }) => brief);
  const more = rough.exact === length.exact ? "" : `, ${rough.brief} with allowances`;
  const lost = spoiled ? `, ${wasted.brief} scrapped in ${spoiled} more` : "";
  return element(
    "li",
    { class: "answer" },
    element("strong", {}, [material || "No material named", size.join(" × ")].filter(Boolean).join(", ")),
    element("span", {}, `${count} ${count === 1 ? "piece" : "pieces"}, ${length.brief}${more}${lost}`),
  );
}
