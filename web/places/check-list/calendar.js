import { identity } from "../../store/project/identity.js";
import { download } from "../../widgets/device/give-file.js";
import { button } from "../../widgets/element.js";
import { quietly } from "../notices.js";

/** @import { App } from "../place.d.ts" */

/** To the minute, with the Z of UTC behind it. */
const MINUTE = "2026-11-30T17:20".length;

/**
 * Puts the steps that have a time among the downloads, as a calendar: those of one line, or of all.
 * @param {App} app
 * @param {string} [id] of the line
 */
export function calendarButton(app, id) {
  async function give() {
    const record = await app.projects.settled();
    if (!record) return;
    const { document } = record;
    const when = `${new Date().toISOString().slice(0, MINUTE)}Z`;
    const project = identity(record);
    const made = await quietly(app.ask({ do: "calendar", document, when, project, id }));
    if (made.ok) download(made);
  }
  return button("Calendar", give);
}
