/** Which project a record holds, and a view shows; and an entry of it. */

/** @import { View } from "../../python/contract.d.ts" */
/** @import { Kept, Picture, ProjectRecord } from "../shapes.d.ts" */

/**
 * Which document a record holds: ids of entries mean something only within it. It is the project's own id until a
 * backup is put in the place of what was there.
 * @param {ProjectRecord | null} record
 */
export const identity = (record) => record?.documentId ?? record?.id ?? null;

/**
 * A view of the project as the core tells it, with what it shows: which record, and after which change of it.
 * @param {ProjectRecord} record
 * @param {View} seen
 * @returns {Picture}
 */
export const viewOf = ({ id, revision }, seen) => ({ ...seen, of: { id, revision } });

/**
 * Whether the view that is shown is from before the last change: the core has not told the newer one yet.
 * @param {{view: Picture | null, record: ProjectRecord | null}} state
 */
export const isOldPicture = ({ view, record }) =>
  Boolean(view && record && (view.of?.id !== record.id || view.of.revision !== record.revision));

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
