/** @import { ProjectRecord } from "../shapes.d.ts" */

/**
 * What stands for a line of the tally in a later sum: its name, else its number.
 * @param {{id: string, name: string}} line
 */
export const lineMark = ({ id, name }) => `[${name || id}]`;

/**
 * Letters of one meaning made one, nearly as the core does: only what may be a name is found by it.
 * @param {string} text
 */
export const fold = (text) => text.toUpperCase().toLowerCase();

/**
 * What goes with a question so that names of the project may stand in its texts; nothing where no
 * text can hold one, so that a key press does not send the whole project.
 * @param {ProjectRecord | null} record the open project
 * @param {unknown} typed the texts
 * @param {string} [id] the entry that is being corrected
 */
export function naming(record, typed, id) {
  if (!record) return {};
  const text = fold(JSON.stringify(typed));
  const isNamed = text.includes("[") || record.document.entries.some(({ name }) => text.includes(fold(name)));
  return isNamed ? { document: record.document, id } : {};
}
