import { form } from "../../widgets/fields/form.js";

/** @import { Document, Done } from "../../python/contract.d.ts" */
/** @import { DrawnField, Typed } from "../../widgets/widget.d.ts" */

/**
 * @param {boolean} isTicked whether a moment is kept already
 * @returns {DrawnField[]}
 */
const fieldsOf = (isTicked) => [
  { key: "done_at", label: "Done", kind: "moment", ...(isTicked ? {} : { may_be_blank: true, blank_means: "Now." }) },
  { key: "temperature", label: "Temperature", kind: "text", help: "Such as 68 F or 20 C." },
  { key: "humidity", label: "Humidity", kind: "text", help: "Such as 45%." },
  { key: "note", label: "Note", kind: "text" },
];

/** @typedef {{done_at: string, temperature: string, humidity: string, note: string, photo: string}} Described */

/**
 * What is kept of a step, as the act "tick" takes it.
 * @param {Partial<Done>} [kept]
 * @returns {Described}
 */
export const described = ({ when = "", temperature = "", humidity = "", note = "", photo = "" } = {}) => ({
  done_at: when,
  temperature,
  humidity,
  note,
  photo,
});

/**
 * What a document has of a step that is done; undefined of one that is not.
 * @param {Document} document
 * @param {string} id of the line
 * @param {string} key of the step
 */
export function doneIn({ entries }, id, key) {
  const line = entries.find((each) => each.id === id);
  return line?.kind === "line" ? line.done?.[key] : undefined;
}

/**
 * How a step was done: when, in what air, and in words.
 * @param {{isTicked: boolean, values: Record<string, Typed>, onInput(values: Record<string, Typed>): void}} how
 */
export const doneForm = ({ isTicked, values, onInput }) => form({ fields: fieldsOf(isTicked), values, onInput });
