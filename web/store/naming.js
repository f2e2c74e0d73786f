/**
 * What goes with a question so that names of the project may stand in its texts; nothing where no
 * text can hold one, so that a key press does not send the whole project.
 * @param {object | null} record the open project
 * @param {unknown} typed the texts
 * @param {string} [id] the entry that is being corrected
 */
export function naming(record, typed, id) {
  if (!record) return {};
  const text = JSON.stringify(typed).toLowerCase();
  const isNamed = text.includes("[") || record.document.entries.some(({ name }) => text.includes(name.toLowerCase()));
  return isNamed ? { document: record.document, id } : {};
}
