/**
 * A field as this person has it: one whose choices are their own, as the tapes of the settings, or
 * that takes a length of the settings when it is left blank.
 * @param {{settings, declared}} here the project's settings, and how all settings are declared
 */
export function offering(field, here) {
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
  return String(settings[key] ?? "").trim() || declared.find((field) => field.key === key).default;
}

/** Says what a bare number means here, where that is no longer what the settings say. */
export function unitNote(node, unit, app) {
  const declared = app.state.get().described.settings.find((field) => field.key === "unit");
  const named = declared.choices.find((choice) => choice.value === unit);
  node.hidden = unit === app.unit();
  node.textContent = `A bare number here still means ${named?.label.toLowerCase()}, as when this was begun.`;
}
