/** Which project a record holds, and a view shows; and an entry of it. */

/** @import { View } from "../../python/contract.d.ts" */
/** @import { Kept, Picture, ProjectRecord, Stamp } from "../shapes.d.ts" */

/**
 * Which document a record holds: ids of entries mean something only within it. It is the project's own id until a
 * backup is put in the place of what was there.
 * @param {ProjectRecord | null} record
 */
export const identity = (record) => record?.documentId ?? record?.id ?? null;

/**
 * Which record something is of, and after which change of it.
 * @param {ProjectRecord} record
 * @returns {Stamp}
 */
export const stampOf = ({ id, revision }) => ({ id, revision });

/**
 * Whether something is of another record, or of what it was before its last change.
 * @param {{of?: Stamp} | null | undefined} made
 * @param {ProjectRecord | null} record
 */
export const isOfBefore = (made, record) => made?.of?.id !== record?.id || made?.of?.revision !== record?.revision;

/**
 * A view of the project as the core tells it, with what it shows: which record, and after which change of it.
 * @param {ProjectRecord} record
 * @param {View} seen
 * @param {string | null} asked the minute that it is as of, where the clock tells one
 * @returns {Picture}
 */
export const viewOf = (record, seen, asked) => ({ ...seen, of: stampOf(record), asked });

/**
 * Whether the view that is shown is from before the last change: the core has not told the newer one yet.
 * @param {{view: Picture | null, record: ProjectRecord | null}} state
 */
export const isOldPicture = ({ view, record }) => Boolean(view && record && isOfBefore(view, record));

/**
 * The entry of a kind that has an id; undefined where there is none.
 * @template {Kept["kind"]} Kind
 * @param {ProjectRecord | null} record
 * @param {Kind} kind
 * @param {string | undefined} id
 */
export function entryOf(record, kind, id) {
  const found = record?.document.entries.find((entry) => entry.id === id && entry.kind === kind);
  return /** @type {Extract<Kept, {kind: Kind}> | undefined} */ (found);
}
