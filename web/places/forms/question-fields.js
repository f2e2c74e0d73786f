import { inUnit } from "./units.js";

/**
 * A field as this person has it: one whose choices are their own, as the tapes of the settings, or
 * that takes a length of the settings when it is left blank.
 * @param {{settings, declared, unit}} here the project's settings, how all settings are declared,
 *   and what a bare number means here
 */
export function offering(declared, here) {
  const field = { ...declared, default: inUnit(declared, "default", here.unit) };
  if (field.fields) return { ...field, fields: field.fields.map((each) => offering(each, here)) };
  if (field.setting) return { ...field, blank_shows: `blank: ${asSet(field.setting, here)}` };
  if (!field.choices_from) return field;
  const { settings } = here;
  const own = (settings[field.choices_from] ?? []).filter((each) => each.name);
  const listed = field.choices.length > 0 ? field.choices : [{ value: "", label: "None" }];
  const prefix = field.choices_prefix ?? "";
  return { ...field, choices: [...listed, ...own.map(({ name }) => ({ value: `${prefix}${name}`, label: name }))] };
}

/** A setting as it was typed. */
function asSet(key, { settings, declared }) {
  const set = declared.find((field) => field.key === key);
  return String(settings[key] ?? "").trim() || inUnit(set, "default", settings.unit);
}
