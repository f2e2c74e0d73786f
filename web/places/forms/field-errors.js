import { element } from "../../widgets/element.js";
import { inWords } from "../notices.js";

/** What was typed where an error points; undefined where it points at no one field. */
function typedAt(values, { field, row, part }) {
  const value = values[field];
  if (row === undefined || !Array.isArray(value)) return value;
  return part === undefined ? value[row] : value[row]?.[part];
}

const isBlank = (value) => value === undefined || value === null || String(value).trim() === "";

/**
 * The refusals of an answer, sorted: what a field that is still blank lacks is wanted, what is said of
 * something typed is wrong. Nothing is wrong before something was typed.
 */
export function sortedErrors(answer, fields, values) {
  const errors = answer.ok ? [] : [answer.error, ...(answer.more ?? [])];
  const declared = (error) => fields.some((field) => field.key === error.field);
  const isWanted = (error) => (declared(error) ? isBlank(typedAt(values, error)) : error.kind === "missing");
  const wrong = errors.filter((error) => !isWanted(error));
  return {
    wanted: errors.filter(isWanted),
    beside: wrong.filter(declared),
    elsewhere: wrong.filter((error) => !declared(error)),
  };
}

/** What is still wanted, in quiet words: blank fields by their labels, then what else must be filled in. */
export function stillNeeded(wanted, fields) {
  const label = (key) => fields.find((field) => field.key === key)?.label ?? key;
  const missing = [...new Set(wanted.filter(({ kind }) => kind === "missing").map(({ field }) => label(field)))];
  return [
    missing.length ? element("p", { class: "help" }, `Still needed: ${missing.join(", ")}.`) : null,
    ...wanted.filter(({ kind }) => kind !== "missing").map((error) => element("p", { class: "help" }, inWords(error))),
  ].filter(Boolean);
}
