import { element } from "../../widgets/element.js";

/** @import { App } from "../place.d.ts" */

const METRIC = new Set(["mm", "cm", "m"]);

/**
 * What a field or question starts with in a unit: its own in millimeters, where it has one.
 * @param {Record<string, any>} declared
 * @param {string} key
 * @param {string | undefined} unit
 */
export const inUnit = (declared, key, unit) => (METRIC.has(unit ?? "") && declared[`${key}_metric`]) || declared[key];

/**
 * A unit as the settings call it, in a sentence.
 * @param {App} app
 * @param {string} unit
 */
export function unitNamed(app, unit) {
  const declared = app.state.get().described?.settings.find((field) => field.key === "unit");
  return declared?.choices?.find((choice) => choice.value === unit)?.label.toLowerCase() ?? unit;
}

/**
 * Says what a bare number means here, where that is no longer what the settings say.
 * @param {HTMLElement} node
 * @param {string} unit
 * @param {App} app
 */
export function unitNote(node, unit, app) {
  node.hidden = unit === app.project.unit();
  node.textContent = `Plain numbers here are still ${unitNamed(app, unit)}, as they were when you started.`;
}

/**
 * Says that what was typed in one unit is read in another now; "" where it is the same.
 * @param {App} app
 * @param {string | null} [typedIn] the unit as it was set when it was typed
 */
export function readAnew(app, typedIn) {
  const now = app.project.unit();
  if (!typedIn || typedIn === now) return "";
  const typed = `You typed this in ${unitNamed(app, typedIn)}, and it’s now read in ${unitNamed(app, now)}.`;
  return `${typed} Add units or clear it.`;
}

/**
 * The line of a form that says so; `typedIn()` is asked anew by each `draw()`.
 * @param {App} app
 * @param {() => string | null} typedIn
 */
export function readAnewLine(app, typedIn) {
  const node = element("p", { class: "help" });
  function draw() {
    node.textContent = readAnew(app, typedIn());
    node.hidden = node.textContent === "";
  }
  draw();
  return { node, draw };
}
