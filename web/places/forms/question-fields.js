import { inUnit } from "./units.js";

/** @import { Settings } from "../../python/contract.d.ts" */
/** @import { DrawnField } from "../../widgets/widget.d.ts" */

/** @typedef {{settings: Settings, declared: DrawnField[], unit: string}} Here the project's settings, how all settings
 *   are declared, and what a bare number means here */

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
  if (field.setting) return { ...field, blank_shows: `${asSet(field.setting, here)} (Settings)` };
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
