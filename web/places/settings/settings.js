import { button, element } from "../../widgets/element.js";
import { offlineSentence } from "../../widgets/messages/status.js";
import { projectKey } from "../forms/form-draft.js";
import { keptForm } from "../forms/kept-form.js";
import { handChoice } from "./hand.js";
import { tolerance } from "./tolerance.js";

/** @import { DrawnField } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

const TITLE = "Project settings";

/**
 * How lengths are read and shown in the open project, and whether the app is ready without network.
 * @param {App} app
 */
export function settings(app) {
  const choices = element("div");
  const allowed = tolerance(app);
  const page = thisApp(app);
  const { described } = app.state.get();
  /** @type {ReturnType<typeof settingsForm> | null} */
  let own = null;

  /** @param {DrawnField[]} fields */
  function drawFields(fields) {
    own = settingsForm(app, fields);
    choices.replaceChildren(own.node);
  }

  /** @param {string[]} changed */
  function refresh(changed) {
    page.draw();
    if (changed.includes("record")) {
      own?.follow();
      allowed?.follow();
    }
    if (!described && changed.includes("described")) drawFields(app.state.get().described?.settings ?? []);
  }

  drawFields(described?.settings ?? []);
  const heading = element("h2", {}, TITLE);
  const node = element("div", { class: "settings" }, heading, choices, allowed?.node, handChoice(app), page.nodes);
  return { node, title: () => TITLE, refresh };
}

/**
 * @param {App} app
 * @param {DrawnField[]} fields
 */
const settingsForm = (app, fields) =>
  keptForm(app, {
    fields,
    slot: projectKey(app, "settings"),
    keptIn: (document) => document.settings,
    unit: app.project.unit,
    make: (mine, document) => ({ act: "set", settings: { ...document.settings, ...mine } }),
    send: app.project.tryChange,
    fieldOf: (field) => field?.replace("settings.", ""),
  });

/**
 * Whether the app is ready without network, its version, and the way to a newer one.
 * @param {App} app
 */
function thisApp(app) {
  const ready = element("p", { class: "help" });
  const update = button("Update", app.acceptUpdate, { class: "button primary" });

  function draw() {
    const { offline, described, stays } = app.state.get();
    ready.textContent = `${offlineSentence(offline)} ${staying(stays)} Version ${described?.version ?? "…"}.`;
    update.hidden = !offline?.update;
  }

  draw();
  return { nodes: [element("h2", {}, "This app"), ready, update], draw };
}

/**
 * Whether the browser has promised to keep what is here; nothing before it was asked.
 * @param {boolean | null | undefined} stays
 */
function staying(stays) {
  if (stays === true) return "The browser will keep your data until you delete it.";
  if (stays === false) return "The browser can erase this if space runs low. Back up now and then.";
  return "";
}
