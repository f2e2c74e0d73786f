/** @import { DrawnField } from "../widget.d.ts" */

const ANYHOW = "optional";
/** Letters that a cell has room for, at twice the text size too. */
const ROOM = 14;
/** What says enough by how it begins. */
const BEGINS = /^(Figured|As many as fit)\b/;

/**
 * What stands in a field that may be left blank: what a blank one means, where that is a word or two.
 * @param {DrawnField} field
 */
export function blankText({ kind, may_be_blank: mayBe, blank_means: means, blank_shows: shows }) {
  if (!mayBe) return "";
  if (shows || !means || kind === "count") return shows ?? ANYHOW;
  const short = means.match(BEGINS)?.[0] ?? means.replace(/\.$/, "");
  return short.length > ROOM ? ANYHOW : short.charAt(0).toLowerCase() + short.slice(1);
}

/**
 * The help of a field, with what a blank one means.
 * @param {DrawnField} field
 */
export function helpOf({ help, may_be_blank: mayBe, blank_means: means, blank_shows: shows }) {
  if (!mayBe || !means || shows) return help;
  return `${help ? `${help} ` : ""}Left blank: ${means.charAt(0).toLowerCase()}${means.slice(1)}`;
}
