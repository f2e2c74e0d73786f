import { element, present } from "../../widgets/element.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";
import { inWords } from "../notices.js";

/** @import { Answered, Error } from "../../python/contract.d.ts" */
/** @import { Typed } from "../../widgets/widget.d.ts" */

/** @typedef {{key: string, label: string}} Named a field, by what is said of it here */
/** @typedef {{wanted: Error[], beside: Error[], elsewhere: Error[]}} Sorted */

/**
 * What was typed where an error points; undefined where it points at no one field.
 * @param {Record<string, any>} values
 * @param {Error} error
 */
function typedAt(values, { field, row, part }) {
  const value = values[field ?? ""];
  if (row === undefined || !Array.isArray(value)) return value;
  return part === undefined ? value[row] : value[row]?.[part];
}

/** @param {Typed | undefined} value */
const isBlank = (value) => value === undefined || value === null || String(value).trim() === "";

/**
 * The refusals of an answer, sorted: what a field that is still blank lacks is wanted, what is said of
 * something typed is wrong. Nothing is wrong before something was typed.
 * @param {Answered<object> | null} answer null before there is any
 * @param {Named[]} fields
 * @param {Record<string, Typed>} values
 * @returns {Sorted}
 */
export function sortedErrors(answer, fields, values) {
  const errors = !answer || answer.ok ? [] : [answer.error, ...(answer.more ?? [])];
  const declared = (/** @type {Error} */ error) => fields.some((field) => field.key === error.field);
  const isWanted = (/** @type {Error} */ error) =>
    declared(error) ? isBlank(typedAt(values, error)) : error.kind === "missing";
  const wrong = errors.filter((error) => !isWanted(error));
  return {
    wanted: errors.filter(isWanted),
    beside: wrong.filter(declared),
    elsewhere: wrong.filter((error) => !declared(error)),
  };
}

/**
 * What is still wanted, in quiet words: blank fields by their labels, then what else must be filled in.
 * @param {Error[]} wanted
 * @param {Named[]} fields
 */
export function stillNeeded(wanted, fields) {
  const label = (/** @type {string | null} */ key) => fields.find((field) => field.key === key)?.label ?? key;
  const missing = [...new Set(wanted.filter(({ kind }) => kind === "missing").map(({ field }) => label(field)))];
  return present([
    missing.length ? element("p", { class: "help" }, `Still need: ${missing.join(", ")}`) : null,
    ...wanted
      .filter(({ kind }) => kind !== "missing")
      .map((error) => element("p", { class: "help" }, unbroken(inWords(error)))),
  ]);
}
