import { thisMinute } from "../../store/project/when.js";
import { download } from "../../widgets/device/give-file.js";
import { readFile } from "../../widgets/device/read-file.js";
import { button, element } from "../../widgets/element.js";
import { fieldError } from "../../widgets/fields/field-error.js";
import { fileField } from "../../widgets/fields/file-field.js";
import { notice, quietly } from "../notices.js";

/** @import { Asks } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @type {[Asks["csv"]["what"], string][]} */
const TABLES = [
  ["parts", "Parts"],
  ["readings", "Readings"],
  ["cuts", "Cuts"],
  ["stock", "Wood on hand"],
];
const UNREADABLE = {
  message: "This file can’t be read.",
  remedy: "Save the table as CSV UTF-8, then pick it again.",
};
const ACCEPT = ".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain";

/**
 * Parts, readings, cuts and wood on hand as tables for other programs, and back from them.
 * @param {App} app
 */
export const tables = (app) =>
  element(
    "section",
    { class: "project", "aria-label": "Tables" },
    element("h2", {}, "Tables (CSV)"),
    TABLES.map(([what, label]) => table(app, what, label)),
  );

/**
 * @param {App} app
 * @param {Asks["csv"]["what"]} what
 * @param {string} label
 */
function table(app, what, label) {
  const wrong = fieldError();

  async function give() {
    const record = await app.projects.settled();
    if (!record) return;
    const made = await quietly(app.ask({ do: "csv", document: record.document, what }));
    if (made.ok) download(made);
  }

  /** @param {File} file */
  async function take(file) {
    const text = await readFile(file);
    if (text === null) return wrong.show(UNREADABLE);
    const answer = await app.project.changeBy((document) => ({
      do: "take_csv",
      document,
      what,
      text,
      when: thisMinute(),
    }));
    wrong.show(answer.ok ? null : answer.error);
    if (!answer.ok) return;
    const { said, step } = answer;
    notice(said, step === undefined ? null : { label: "Undo", run: () => app.project.undoStep(step) });
  }

  return element(
    "div",
    { class: "table-row" },
    element("h3", {}, label),
    button(`Export ${label.toLowerCase()}`, give),
    fileField({ label: `Import ${label.toLowerCase()}`, accept: ACCEPT, onFile: take }),
    wrong.node,
  );
}
