import { present } from "../element.js";

/** @import { DrawnField, Typed } from "../widget.d.ts" */

/** How a choice says no, or yes, by its first word. */
const NO = /^(No|None)\b/;
const YES = /^Yes\b/;
const ASIDE = / \(.*\)$/;
/** Letters of a folded row, about two lines of the narrowest phone. */
const MOST = 72;

/**
 * A field and what stands in it now, in a few words; null where nothing does.
 * @param {DrawnField} field
 * @param {Typed | undefined} value
 */
function saidOf(field, value) {
  const { kind, choices = [], choices_from: own, unit, blank_shows: shows } = field;
  const name = inSentence(field.label);
  const all = (/** @type {string | undefined} */ said) => (said ? `${name} ${said}` : null);
  if (Array.isArray(value)) return all(String(value.filter(isFilledIn).length || ""));
  const chosen = choices.find((choice) => choice.value === (value ?? ""));
  if (chosen && own) return all(value && chosen.label);
  if (chosen) return ofChoice(name, chosen.label);
  if (!value) return all(shows);
  if (kind === "angle" && /\d$/.test(value)) return all(`${value}°`);
  if (kind === "moment") return all(value.replace("T", " "));
  if (kind === "length") return all(value.replaceAll('"', "″").replaceAll("'", "′"));
  if (kind === "number" && unit) return all(unit === "%" ? `${value}%` : `${value} ${unit}`);
  return all(value);
}

/**
 * "edging on both edges", and for what says no or yes "no back cleat", "back cleat".
 * @param {string} name
 * @param {string} label
 */
function ofChoice(name, label) {
  if (NO.test(label)) return `no ${name}`;
  return YES.test(label) ? name : `${name} ${inSentence(label.replace(ASIDE, ""))}`;
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
 * What fields say now, in one line: "Thickness 3/4, no back cleat, 2 more". What is blank says nothing.
 * @param {DrawnField[]} fields
 * @param {Record<string, Typed>} values
 */
export function presently(fields, values) {
  const parts = present(fields.map((field) => saidOf(field, values[field.key])));
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
