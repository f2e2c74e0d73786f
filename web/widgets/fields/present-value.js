/** @import { DrawnField, Typed } from "../widget.d.ts" */

const NOTHING = "–";
const ASIDE = / \(.*\)$/;
/** Letters of a folded row, about two lines of the narrowest phone. */
const MOST = 72;

/**
 * What stands in a field now, in a word or two.
 * @param {DrawnField} field
 * @param {Typed | undefined} value
 */
function saidOf({ kind, choices = [], choices_from: own, unit, blank_shows: shows }, value) {
  if (Array.isArray(value)) return String(value.filter(isFilledIn).length || NOTHING);
  const chosen = choices.find((choice) => choice.value === (value ?? ""));
  if (chosen) return own ? chosen.label : inSentence(chosen.label.replace(ASIDE, ""));
  if (!value) return shows ?? NOTHING;
  if (kind === "angle" && /\d$/.test(value)) return `${value}°`;
  if (kind === "length") return value.replaceAll('"', "″").replaceAll("'", "′");
  return kind === "number" && unit ? `${value} ${unit}` : value;
}

/**
 * Whether anything stands in a field, a list or a row.
 * @param {Typed | Record<string, Typed> | undefined} value
 * @returns {boolean}
 */
export const isFilledIn = (value) =>
  typeof value === "object" ? Object.values(value).some(isFilledIn) : Boolean(value?.trim());

/** @param {string} label */
const inSentence = (label) => (/^.[A-Z]/.test(label) ? label : label[0].toLowerCase() + label.slice(1));

/**
 * What fields say now, in one line: "Thickness 3/4, rabbet –, 2 more".
 * @param {DrawnField[]} fields
 * @param {Record<string, Typed>} values
 */
export function presently(fields, values) {
  const parts = fields.map((field) => `${inSentence(field.label)} ${saidOf(field, values[field.key])}`);
  let told = "";
  let left = parts.length;
  for (const part of parts) {
    if (told && told.length + part.length > MOST) break;
    told += told ? `, ${part}` : part;
    left -= 1;
  }
  const all = left ? `${told}, ${left} more` : told;
  return all.charAt(0).toUpperCase() + all.slice(1);
}
