/** @import { Settings } from "../../python/contract.d.ts" */
/** @import { DrawnField } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @typedef {{settings: Settings, declared: DrawnField[], unit: string}} Here the project's settings, how all settings
 *   are declared, and what a bare number means here */

const METRIC = new Set(["mm", "cm", "m"]);

/**
 * What a field or question starts with in a unit: its own in millimeters, where it has one.
 * @param {Record<string, any>} declared
 * @param {string} key
 * @param {string | undefined} unit
 */
export const inUnit = (declared, key, unit) => (METRIC.has(unit ?? "") && declared[`${key}_metric`]) || declared[key];

/**
 * A field as this person has it: one whose choices are their own, as the tapes of the settings, or
 * that takes a length of the settings when it is left blank.
 * @param {DrawnField} declared
 * @param {Here} here
 * @returns {DrawnField}
 */
export function offering(declared, here) {
  const field = { ...declared, default: inUnit(declared, "default", here.unit) };
  if (field.fields) return { ...field, fields: field.fields.map((each) => offering(each, here)) };
  if (field.setting) return { ...field, blank_shows: `blank: ${asSet(field.setting, here)}` };
  if (!field.choices_from) return field;
  const { settings } = here;
  const { choices = [] } = field;
  /** @type {{name: string}[]} */
  const own = (settings[field.choices_from] ?? []).filter((each) => each.name);
  const listed = choices.length > 0 ? choices : [{ value: "", label: "None" }];
  const prefix = field.choices_prefix ?? "";
  return { ...field, choices: [...listed, ...own.map(({ name }) => ({ value: `${prefix}${name}`, label: name }))] };
}

/**
 * A setting as it was typed.
 * @param {string} key
 * @param {Here} here
 */
function asSet(key, { settings, declared }) {
  const set = declared.find((field) => field.key === key);
  return String(settings[key] ?? "").trim() || (set && inUnit(set, "default", settings.unit));
}

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
  node.textContent = `A bare number here still means ${unitNamed(app, unit)}, as when this was begun.`;
}
