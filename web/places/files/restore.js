import { element } from "../../widgets/element.js";
import { restoring } from "./open-backup.js";

/** @import { App } from "../place.d.ts" */

const TITLE = "Restore a backup";

/**
 * A backup as a project again, where somebody looks for projects.
 * @param {App} app
 */
export const restore = (app) => ({
  node: element(
    "div",
    { class: "project" },
    element("a", { class: "back", href: "#projects" }, "‹ All projects"),
    element("h2", {}, TITLE),
    element("p", { class: "help" }, "Pick a backup file. You’ll see what’s in it before anything changes."),
    restoring(app),
  ),
  title: () => TITLE,
});
